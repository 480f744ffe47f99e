import { dimensionalChange, type MoistureContent, woodMoisture } from "../../kernels/air.ts"
import type { Region } from "../../kernels/polygon/region.ts"
import type { Mm } from "../../kernels/units.ts"
import type { Rules } from "../../rulebook/rules.ts"
import type { Room, Wall } from "../../survey/room.ts"
import type { JobFacts } from "../trade.ts"
import { largestField } from "./breaks.ts"
import { wholeUp } from "./whole-up.ts"

/** How a floor will grow and shrink across its boards, and the gap that takes. */
export interface Movement {
  /** Size along and across the boards of the room, or of its largest field where breaks part it, mm. */
  along: Mm
  across: Mm
  /** Moisture of the boards when laid: read, or at rest with the air during the work; and in service, per cent. */
  laidAt: MoistureContent
  wasRead: boolean
  driest: MoistureContent
  dampest: MoistureContent
  /** Share of solid timber's movement, and whether the maker gave it. */
  share: number
  shareByMaker: boolean
  /** Total growth and shrinkage across the boards, mm, both positive. */
  growth: Mm
  shrinkage: Mm
  /** Gap by rule and by calculation, mm at each edge, rounded up; and the larger of the two. */
  byRule: Mm
  byCalculation: Mm
  gap: Mm
  /** How wide the gap can open at its driest, mm. */
  widest: Mm
}

/** What decides the movement besides the room. */
export interface MovementTask {
  wall: Wall
  /** The room, or its fields where breaks part it, to the walls. */
  fields: readonly Region[]
  /** The maker's share of solid movement, if given. */
  moves: number | undefined
  /** True where one line holds the floor, so that all movement goes one way. */
  held: boolean
  /** A gap written by the author, mm. */
  written: Mm | undefined
}

/**
 * Movement and gap of a floating floor.
 * Moisture in service: Wood Handbook (FPL-GTR-190), chapter 4, equation 4-5; movement: chapter 13, change = size × coefficient × change of
 * moisture, times the engineered board's own share. Free edges take half each; a floor held along one line moves all one way.
 */
export function movement(room: Room, task: MovementTask, job: JobFacts): Movement {
  const { rules, climate } = job
  const size = largestField(task.wall, task.fields)
  const read = latestBoardReading(room)
  const laidAt = read ?? woodMoisture(climate.temperature, climate.humidity)
  const { temperature, humidityLow, humidityHigh } = climate.inService
  const driest = woodMoisture(temperature, humidityLow)
  const dampest = woodMoisture(temperature, humidityHigh)
  const share = task.moves ?? rules.value("floor-movement-engineered")
  const coefficient = rules.value("floor-movement-solid") * share
  const growth = Math.max(0, dimensionalChange(size.across, coefficient, laidAt, dampest))
  const shrinkage = Math.max(0, -dimensionalChange(size.across, coefficient, laidAt, driest))
  const each = task.held ? 1 : 2
  const byRule = gapByRule(Math.max(size.along, size.across), rules)
  const byCalculation = wholeUp(growth / each)
  const gap = task.written ?? Math.max(byRule, byCalculation)
  return {
    ...size,
    laidAt,
    wasRead: read !== undefined,
    driest,
    dampest,
    share,
    shareByMaker: task.moves !== undefined,
    growth,
    shrinkage,
    byRule,
    byCalculation,
    gap,
    widest: gap + shrinkage / each,
  }
}

/** Gap at each edge by the rule of so much a metre, and not less than the least; whole mm, rounded up. */
export function gapByRule(span: Mm, rules: Rules): Mm {
  return wholeUp(Math.max(rules.value("floor-gap-least"), (rules.value("floor-gap-per-metre") * span) / 1000))
}

function latestBoardReading(room: Room): MoistureContent | undefined {
  return room.readings
    .filter((reading) => reading.what === "board")
    .sort((a, b) => a.on.localeCompare(b.on))
    .at(-1)?.value
}
