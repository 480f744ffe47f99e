import type { Finding } from "../../../kernels/finding.ts"
import type { Levels } from "../floors.ts"
import { type RulesRead, readThrough } from "../rules-read.ts"
import { type DoorAsk, doorAsk } from "./asks.ts"
import { type EnclosureItem, enclosureItems } from "./enclosure.ts"
import { innerRoomFindings } from "./inner-rooms.ts"
import { type EscapeRoute, escapeRoute } from "./route.ts"
import { type StoreyHeights, storeyHeights } from "./storeys.ts"
import { garage } from "./ways.ts"

/** The escape route of the house and what guidance asks of each doorway, by England's guidance as recalled or quoted. */
export interface Escape {
  heights: StoreyHeights
  route: EscapeRoute
  /** By doorway id, in the order of house.yaml. */
  asks: ReadonlyMap<string, DoorAsk>
  enclosure: EnclosureItem[]
  /** Questions that building control must answer before leaves are ordered. */
  questions: string[]
  findings: Finding[]
  /** Ids of the rulebook entries it rests on. */
  rests: string[]
}

/**
 * The escape route: heights of storeys, the stair's enclosure, and for each doorway what is asked and why.
 * Advice from guidance, with questions for building control; it certifies nothing.
 */
export function escapeOf(levels: Levels, reader: RulesRead): Escape {
  const rules = readThrough(reader)
  const { house, passed } = levels
  const heights = storeyHeights(levels, rules)
  const route = escapeRoute(house, heights)
  const asks = new Map(
    house.doors.map((door) => [door.id, doorAsk(door, { house, heights, route, rules })] as const),
  )
  const isAsked = heights.asks !== "open"
  return {
    heights,
    route,
    asks,
    enclosure: isAsked ? enclosureItems(house, route, rules) : [],
    questions: [...asks.values()].flatMap((ask) => ask.question ?? []),
    findings: [
      ...heights.findings,
      ...route.findings,
      ...integralGarage(levels),
      ...innerRoomFindings({ house, passed, heights, rules }),
    ],
    rests: rules.ids(),
  }
}

function integralGarage({ house }: Levels): Finding[] {
  return house.doors.flatMap((door, index) =>
    door.between.includes(garage)
      ? [
          {
            code: "escape-garage-in-house",
            severity: "note" as const,
            at: { file: "house.yaml", path: ["doors", index] },
            message: `Door ${door.id} opens to a garage inside the house: wall and floor to the garage carry 30 minutes, the leaf FD30S, self-closing, the opening 100 mm above the garage floor.`,
            mend: "Measure the step, and look at the wall and ceiling of the garage too.",
          },
        ]
      : [],
  )
}
