import type { ProgrammeFile } from "../../src/intake/schema/programme.ts"
import { instantAt } from "../../src/kernels/calendar/instant.ts"
import { calendarsOf } from "../../src/programme/calendars.ts"
import { dayBlocks } from "../../src/programme/day-blocks.ts"
import { waitsFor } from "../../src/programme/house-rules.ts"
import type { Choice, Placeable } from "../../src/programme/place.ts"
import type { Site } from "../../src/programme/programme.ts"
import { programmeRules } from "../../src/programme/rules.ts"
import { unitPlan } from "../../src/programme/units.ts"
import { waitsWith } from "../../src/programme/wait-net.ts"
import { waysOf } from "../../src/programme/ways.ts"
import { WorkTable } from "../../src/programme/work-table.ts"
import type { Step } from "../../src/trades/trade.ts"
import { programmeOf, siteOf } from "../fixtures/programme.ts"
import { rulesOf, surveyed } from "../fixtures/rooms.ts"

/** Two rooms that nothing joins. */
export const twoRooms: Site = siteOf([surveyed(), surveyed({ id: "R2" })])

/** Steps made ready to be placed, as the dating does it. */
export function placeable(
  steps: readonly Step[],
  { file = programmeOf(), site = twoRooms }: { file?: ProgrammeFile; site?: Site } = {},
): Placeable {
  const ways = waysOf(site)
  const blocks = dayBlocks(steps, site, ways)
  const waits = waitsFor({ steps, site, ways, blocks })
  const { plan } = unitPlan({ steps, waits, blocks, site, ways, file, rules: rulesOf(programmeRules) })
  const calendars = calendarsOf(file, "Europe/London", 8)
  const opening = instantAt(file.start, file.hours[0]!.from, "Europe/London")
  return {
    plan,
    tables: calendars.map((calendar) => new WorkTable(calendar, file.start)),
    opening,
    began: opening,
    release: new Float64Array(plan.units.length),
    pinned: new Map(),
  }
}

/** The plainest choice: in the order of the plan, everybody on each unit, nothing saved up. */
export function plainChoice({ plan }: Placeable): Choice {
  return {
    priority: plan.units.map((_, index) => index),
    people: plan.units.map((unit) => plan.crews[unit.crew]!.people),
    waits: waitsWith(
      plan,
      plan.units.map(() => -1),
    ),
  }
}
