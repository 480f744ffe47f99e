/** A rule of measurement from outside, with where it comes from. */
export interface MeasurementFact<Value> {
  what: string
  value: Value
  source: string | "common practice" | "from memory"
}

/** The largest void that is not taken out of a finished surface, m2. */
export const voidsNotDeducted: Record<"smm7" | "nrm2", MeasurementFact<number>> = {
  smm7: {
    what: "floor, wall and ceiling finishes: no deduction for voids up to and including 0.50 m2",
    value: 0.5,
    source:
      "Standard Method of Measurement of Building Works, 7th edition (SMM7), section M, as quoted by teaching slides on quantity surveying",
  },
  nrm2: {
    what: "floor, wall and ceiling finishes and decoration: no deduction for voids up to and including 1.00 m2",
    value: 1,
    source: "from memory",
  },
}

/** The lining of a door frame worked in print: run in m, girth in mm, area in m2. */
export const liningWorked: MeasurementFact<{ run: number; lining: number; area: number }> = {
  what: "the lining of a painted door frame, 306 girth up both sides and over the head, 5.2 m in all: 1.591 m2",
  value: { run: 5.2, lining: 306, area: 1.591 },
  source: "an article on measuring painting work by girth, read",
}

/** True area over plan area of a slope, by pitch. */
export const slopeFactors: MeasurementFact<{ pitch: number; factor: number }>[] = [
  {
    what: "50 degrees",
    value: { pitch: 50, factor: 1.5557 },
    source: "trigonometric tables: secant",
  },
  { what: "35 degrees", value: { pitch: 35, factor: 1.2208 }, source: "trigonometric tables: secant" },
  { what: "60 degrees", value: { pitch: 60, factor: 2 }, source: "trigonometric tables: secant" },
]

/** Height that counts as usable under a slope when floor area is stated, mm. */
export const usableHeight: MeasurementFact<number> = {
  what: "floor with less than 1.5 m headroom is stated apart",
  value: 1500,
  source: "from memory",
}
