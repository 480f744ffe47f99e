import { describe, expect, it } from "vitest"
import { escapeOf } from "../../../../src/trades/doors/escape/escape.ts"
import { rulesRead } from "../../../../src/trades/doors/rules-read.ts"
import { doorRules, jobOf, type ShortHouse } from "../houses.ts"

/** Approved Document B vol 1, 2019 edition with 2020 and 2022 amendments, England: paragraphs as quoted second hand. */
const ADB = {
  height: "2.5: a storey over 4.5 m above ground wants a protected stairway",
  loft: "2.21, 2.22: a loft over 4.5 m: doors to the stair E 20 at least",
  openPlan: "2.21 to 2.23: open plan: partitions, or sprinklers with a separated storey",
  upper: "2.6 (from memory): over 7.5 m more than a protected stair",
  stairDoor: "Table C1: enclosure of a protected stairway in a dwelling: E 20",
  garage: "Table C1 item 11: integral garage: E 30 Sa, self-closing",
  omit: "government FAQ: bathroom within the enclosure, small low-risk cupboards, may be omitted",
  closers: "no self-closers inside a single house except to the garage",
  inner: "2.11 (from memory): inner rooms",
} as const

interface Layout {
  what: string
  house: ShortHouse
  asks: "open" | "protected" | "more"
  /** Expected minimum of each doorway. */
  doors: Record<string, string>
  findings: string[]
  by: string[]
}

const windowed = { id: "W1", kind: "window", wall: 3, fromLeft: 500, width: 700, height: 900, sill: 800 }
const tiny = { id: "W1", kind: "window", wall: 3, fromLeft: 500, width: 500, height: 600, sill: 800 }

const twoStorey: ShortHouse = {
  decks: [0, 2600],
  rooms: [
    "H hall 0",
    "L living 0",
    "K kitchen 0",
    "M landing 1",
    "B1 bedroom 1",
    "B2 bedroom 1",
    "W bathroom 1",
  ],
  stairs: ["S1 H M"],
  doors: ["X outside H final", "DL H L", "DK H K", "D1 M B1", "D2 M B2", "DW M W"],
  windows: { B1: [windowed], B2: [windowed], L: [windowed] },
}
const withLoft: ShortHouse = {
  ...twoStorey,
  decks: [0, 2600, 5200],
  rooms: [...twoStorey.rooms, "T landing 2", "A1 bedroom 2", "A2 bathroom 2"],
  stairs: ["S1 H M", "S2 M T new"],
  doors: [...twoStorey.doors, "DA T A1", "DS A1 A2"],
}
const loftDoors = {
  X: "none",
  DL: "FD20",
  DK: "FD20",
  D1: "FD20",
  D2: "FD20",
  DW: "FD20-ask",
  DA: "FD20",
  DS: "none",
}

const layouts: Layout[] = [
  {
    what: "two storeys, windows to escape by: nothing asked of the doors",
    house: twoStorey,
    asks: "open",
    doors: { X: "none", DL: "none", DK: "none", D1: "none", D2: "none", DW: "none" },
    findings: [],
    by: [ADB.height],
  },
  {
    what: "three storeys by a loft: doors onto the stair, not the shower room off the bedroom; bathroom is a question",
    house: withLoft,
    asks: "protected",
    doors: loftDoors,
    findings: [],
    by: [ADB.loft, ADB.stairDoor, ADB.omit, ADB.closers],
  },
  {
    what: "three storeys as built, no new stair: the same doors by 2.5",
    house: { ...withLoft, stairs: ["S1 H M", "S2 M T"] },
    asks: "protected",
    doors: loftDoors,
    findings: [],
    by: [ADB.height, ADB.stairDoor],
  },
  {
    what: "loft over a bungalow: floor under 4.5 m, small window is named",
    house: {
      decks: [0, 2700],
      rooms: ["H hall 0", "L living 0", "T landing 1", "A1 bedroom 1"],
      stairs: ["S1 H T new"],
      doors: ["X outside H final", "DL H L", "DA T A1"],
      windows: { A1: [tiny], L: [windowed] },
    },
    asks: "open",
    doors: { X: "none", DL: "none", DA: "none" },
    findings: ["escape-window-too-small"],
    by: [ADB.height],
  },
  {
    what: "sloping site: lowest ground 2.2 m down makes two storeys high",
    house: { ...twoStorey, lowestGround: -2200 },
    asks: "protected",
    doors: { X: "none", DL: "FD20", DK: "FD20", D1: "FD20", D2: "FD20", DW: "FD20-ask" },
    findings: [],
    by: [ADB.height, ADB.stairDoor],
  },
  {
    what: "split level: half landing joins four decks, top over 4.5 m",
    house: {
      decks: [0, 1300, 2600, 4700],
      rooms: [
        "H hall 0",
        "L living 1",
        "J landing 1",
        "M landing 2",
        "B1 bedroom 2",
        "T landing 3",
        "A1 study 3",
      ],
      stairs: ["S1 H J", "S2 J M", "S3 M T"],
      doors: ["X outside H final", "DL J L", "D1 M B1", "DA T A1"],
    },
    asks: "protected",
    doors: { X: "none", DL: "FD20", D1: "FD20", DA: "FD20" },
    findings: [],
    by: [ADB.height, ADB.stairDoor],
  },
  {
    what: "garage in the house: FD30S self-closing even where the house is low",
    house: {
      ...twoStorey,
      doors: [...twoStorey.doors, "DG garage H"],
    },
    asks: "open",
    doors: { DG: "FD30S", DL: "none", DW: "none" },
    findings: ["escape-garage-in-house"],
    by: [ADB.garage],
  },
  {
    what: "inner room: a study reached only through a bedroom in the loft",
    house: {
      ...withLoft,
      rooms: [...withLoft.rooms, "A3 study 2"],
      doors: [...withLoft.doors, "DI A1 A3"],
    },
    asks: "protected",
    doors: { ...loftDoors, DI: "none" },
    findings: ["escape-inner-room"],
    by: [ADB.inner],
  },
  {
    what: "bathroom and cupboard off the stair: questions, not demands",
    house: { ...withLoft, doors: [...withLoft.doors, "DC H cupboard"] },
    asks: "protected",
    doors: { ...loftDoors, DC: "FD20-ask" },
    findings: [],
    by: [ADB.omit],
  },
  {
    what: "open-plan ground floor: the stair stands open to the living room",
    house: {
      ...withLoft,
      doors: [
        "X outside H final",
        "DL H L open",
        "DK L K",
        "D1 M B1",
        "D2 M B2",
        "DW M W",
        "DA T A1",
        "DS A1 A2",
      ],
    },
    asks: "protected",
    doors: { X: "none", DL: "none", D1: "FD20", DA: "FD20", DS: "none" },
    findings: ["escape-open-plan"],
    by: [ADB.openPlan],
  },
  {
    what: "route through a room: the stair's hall has no exit of its own",
    house: {
      ...withLoft,
      doors: ["X outside L final", ...withLoft.doors.filter((door) => !door.startsWith("X"))],
    },
    asks: "protected",
    doors: { X: "none", D1: "FD20", DA: "FD20" },
    findings: ["escape-through-room"],
    by: [ADB.height],
  },
  {
    what: "a floor over 7.5 m: more than a protected stair, named and deferred",
    house: {
      ...withLoft,
      decks: [0, 2900, 5800, 8400],
      rooms: [...withLoft.rooms, "Q landing 3", "A9 bedroom 3"],
      stairs: ["S1 H M", "S2 M T", "S3 T Q new"],
      doors: [...withLoft.doors, "D9 Q A9"],
    },
    asks: "more",
    doors: { ...loftDoors, D9: "FD20" },
    findings: ["escape-floor-over-upper-limit"],
    by: [ADB.upper],
  },
]

function answer(house: ShortHouse) {
  return escapeOf(jobOf(house), rulesRead(doorRules))
}

describe("what guidance asks of each door", () => {
  it.each(layouts)("$what", (layout) => {
    const found = answer(layout.house)
    expect(layout.by.length).toBeGreaterThan(0)
    expect(found.heights.asks).toBe(layout.asks)
    const asked = Object.keys(layout.doors).map((id) => [id, found.asks.get(id)?.minimum])
    expect(Object.fromEntries(asked)).toEqual(layout.doors)
    expect(found.findings.map((finding) => finding.code)).toEqual(layout.findings)
  })

  it("gives one reason in one sentence and a clause for every door", () => {
    for (const layout of layouts) {
      for (const ask of answer(layout.house).asks.values()) {
        expect(ask.why.trim()).toMatch(/^[A-Z].*\.$/)
        expect(ask.clause).toMatch(/Approved Document B/)
      }
    }
  })

  it("asks a closer only of the door to a garage", () => {
    const closing = layouts.flatMap((layout) =>
      [...answer(layout.house).asks.values()].filter((ask) => ask.selfClosing).map((ask) => ask.door),
    )
    expect(closing).toEqual(["DG"])
  })

  it("lists what else encloses the stair: light over a door, soffit, cupboard, walls", () => {
    const { enclosure } = answer({
      ...withLoft,
      doors: [...withLoft.doors.filter((door) => door !== "D2 M B2"), "D2 M B2 light", "DC H cupboard"],
    })
    expect(enclosure.some((item) => item.where === "D2" && /light/.test(item.what))).toBe(true)
    expect(enclosure.some((item) => item.where === "DC")).toBe(true)
    expect(enclosure.filter((item) => /Underside/.test(item.what))).toHaveLength(2)
    expect(enclosure.filter((item) => /Walls/.test(item.what)).map((item) => item.where)).toEqual([
      "H",
      "M",
      "T",
    ])
  })

  it("puts a question for the bathroom and the cupboard on the landing", () => {
    const { questions } = answer({ ...withLoft, doors: [...withLoft.doors, "DC H cupboard"] })
    expect(questions).toHaveLength(2)
  })

  it("walks the way out by stairs and exit", () => {
    expect(answer(withLoft).route.route?.map((way) => way.id)).toEqual(["S2", "S1", "X"])
  })
})
