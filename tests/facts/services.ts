/** Heights of switches and sockets over the finished floor, mm. */
export const REACH = {
  what: "switches and sockets in new dwellings",
  lowest: 450,
  highest: 1200,
  source: "Approved Document M, as quoted by a building warranty provider",
}

/** Zones of rooms with a bath or shower, mm. */
export const WET_ZONES = [
  {
    rule: "elec-wet-zone-height",
    value: 2250,
    source: "BS 7671 section 701, as quoted by guides to bathroom zones",
  },
  {
    rule: "elec-wet-zone-two",
    value: 600,
    source: "BS 7671 section 701, as quoted by an electrical contractor's page on baths and showers",
  },
  {
    rule: "elec-wet-socket",
    value: 3000,
    source: "BS 7671:2018, 701.512.3, as quoted by a discussion among engineers",
  },
]

/** Hole for a pipe through a floor that moves, mm: pipe and two gaps. */
export const HOLES = [
  { what: "15 pipe, 10 gap", pipe: 15, gap: 10, value: 35, source: "common practice" },
  { what: "15 pipe, 16 gap", pipe: 15, gap: 16, value: 47, source: "common practice" },
  { what: "22 pipe, 12 gap", pipe: 22, gap: 12, value: 46, source: "common practice" },
]
