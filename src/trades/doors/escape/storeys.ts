import type { At, Finding } from "../../../kernels/finding.ts"
import { fixed, type Mm, mmText } from "../../../kernels/units.ts"
import type { Room, Storey } from "../../../survey/room.ts"
import { floorLevel, type Levels } from "../floors.ts"
import type { RulesRead } from "../rules-read.ts"

/** A storey with the height of its finished floor over the lowest ground. */
export interface StoreyHeight {
  storey: Storey
  /** Highest finished floor of the storey above the lowest ground beside the house, mm. */
  height: Mm
  /** True if people use it: it holds a room that is no store or cupboard, or no room of it was surveyed and a stair leads there. */
  used: boolean
}

/** What the heights of the storeys ask of the stair. */
export interface StoreyHeights {
  /** From the lowest up. */
  storeys: StoreyHeight[]
  /** The highest used storey. */
  top: StoreyHeight
  /** `open`: nothing asked of the stair by height; `protected`: a protected stair; `more`: more than a protected stair. */
  asks: "open" | "protected" | "more"
  findings: Finding[]
}

const noFloor = { file: "house.yaml", path: ["storeys"] } satisfies At

/**
 * Heights of the storeys from lowest ground to finished floor, and what the highest one asks of the stair.
 * @returns a warning within the rulebook's nearness to a limit (door-escape-near-limit), and over the upper limit
 */
export function storeyHeights(levels: Levels, rules: RulesRead): StoreyHeights {
  const storeys = [...levels.house.storeys]
    .sort((a, b) => a.deck - b.deck)
    .map((storey) => heightOf(storey, levels))
  const used = storeys.filter((each) => each.used)
  const top = used.at(-1) ?? storeys.at(-1)!
  const limit = rules.value("door-escape-storey-limit")
  const upper = rules.value("door-escape-upper-limit")
  const asks = top.height > upper ? "more" : top.height > limit ? "protected" : "open"
  const findings = [limit, upper].flatMap((each) => nearLimit(top, each, rules))
  if (asks === "more") findings.push(overUpper(top, upper))
  return { storeys, top, asks, findings }
}

/** A height in metres for the reader, to the centimetre. */
export function metresText(height: Mm): string {
  return `${fixed(height / 1000, 2)} m`
}

function heightOf(storey: Storey, levels: Levels): StoreyHeight {
  const rooms = levels.house.rooms.filter((room) => room.storey.id === storey.id)
  const floors = rooms.map((room) => floorLevel(room, levels.passed))
  const highest = floors.length > 0 ? Math.max(...floors) : storey.deck + storey.finishNow
  const reached = levels.house.stairs.some((stair) => stair.to === storey.id)
  const used = rooms.length > 0 ? rooms.some(isLivedIn) : reached
  return { storey, height: highest - levels.house.lowestGround, used }
}

function isLivedIn(room: Room): boolean {
  return room.use !== "store" && room.use !== "cupboard"
}

function nearLimit(top: StoreyHeight, limit: Mm, rules: RulesRead): Finding[] {
  const near = rules.value("door-escape-near-limit")
  if (Math.abs(top.height - limit) > near) return []
  const side = top.height > limit ? "over" : "at or under"
  return [
    {
      code: "escape-floor-near-limit",
      severity: "warning",
      at: noFloor,
      message: `The finished floor of ${top.storey.name} lies ${mmText(top.height)} mm above the lowest ground, within ${near} mm ${side} the limit of ${metresText(limit)}.`,
      expected: "A level taken from the lowest ground to the finished floor with an instrument.",
      mend: "Take the level again and agree with building control which side of the limit it lies.",
    },
  ]
}

function overUpper(top: StoreyHeight, upper: Mm): Finding {
  return {
    code: "escape-floor-over-upper-limit",
    severity: "warning",
    at: noFloor,
    message: `The finished floor of ${top.storey.name} lies ${metresText(top.height)} above the lowest ground, over ${metresText(upper)}: more than a protected stair is asked (a second escape route, or sprinklers).`,
    mend: "Doors alone do not answer this: have the escape designed and agreed with building control before any work.",
  }
}
