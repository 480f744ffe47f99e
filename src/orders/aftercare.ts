import { addDays } from "../kernels/calendar/dates.ts"
import { clockAt } from "../kernels/calendar/instant.ts"
import type { IsoDate } from "../kernels/units.ts"
import type { Programme } from "../programme/programme.ts"
import type { Rules } from "../rulebook/rules.ts"
import type { OrderLine } from "./orders.ts"
import { monthsAfter } from "./payments.ts"

/** One thing to do after the work is done. */
export interface Care {
  /** Stable key, for calendars. */
  id: string
  what: string
  how: string
  /** The first day it is due, and every day it is due within the years that aftercare is listed for. */
  due: IsoDate[]
  /** How often, in words. */
  often: string
  /** The rulebook entry it rests on. */
  rest: string
}

interface CareTask {
  lines: readonly OrderLine[]
  programme: Programme
  rules: Rules
}

/** What the new work asks of the household, from what was really used, in order of the first day due. */
export function aftercare({ lines, programme, rules }: CareTask): Care[] {
  const { finish } = programme
  const names = (test: (line: OrderLine) => boolean) =>
    [...new Set(lines.filter(test).map((line) => line.product.name))].join(" and ")
  const oil = names(({ product }) => product.kind === "liquid" && product.use === "oil")
  const boards = names(({ product }) => product.kind === "board")
  const paint = names(({ product }) => product.kind === "liquid" && paints.has(product.use))
  const fire = names(({ product }) => product.kind === "leaf" && product.fire !== "none")
  const wet = names(({ product }) => product.kind === "tile")
  const oiled = lastReady(programme, "oil")
  const due = dueDays(finish, rules)
  const cares: (Care | null)[] = [
    oil && oiled
      ? {
          id: "rugs",
          what: "Rugs may go down and the floor may be wiped with a damp cloth",
          how: `Until then walk on it in socks or soft shoes, lift furniture instead of pushing it, and leave it uncovered: the oil (${oil}) is still hardening.`,
          due: [addDays(oiled, rules.value("aftercare-no-rugs"))],
          often: "once",
          rest: "aftercare-no-rugs",
        }
      : null,
    boards
      ? {
          id: "floor-gaps",
          what: "Look at the new floor after its first year",
          how: `Small gaps between boards (${boards}) come with dry winter air and close again. Tell us of any that stay, and of boards that have risen.`,
          due: due.once("aftercare-floor-look"),
          often: "once",
          rest: "aftercare-floor-look",
        }
      : null,
    oil
      ? {
          id: "oil",
          what: "Oil the floor lightly where people walk most",
          how: `With ${oil}, or the care oil its maker names; vacuum first, wipe off all that does not soak in. Hang oily cloths out of doors, single and spread, until they are dry: rolled up they can set themselves alight.`,
          due: due.every("aftercare-oil"),
          often: everyText(rules.value("aftercare-oil")),
          rest: "aftercare-oil",
        }
      : null,
    oil
      ? {
          id: "oil-whole",
          what: "Oil the whole floor",
          how: `With ${oil}, after a thorough clean. Ask us if you would rather not do it yourselves.`,
          due: due.every("aftercare-oil-whole"),
          often: everyText(rules.value("aftercare-oil-whole")),
          rest: "aftercare-oil-whole",
        }
      : null,
    fire
      ? {
          id: "doors",
          what: "Look at the doors that hold back fire",
          how: `Each (${fire}) must shut and latch at a light push, by itself where it has a closer, with an even narrow gap all round and the strip in its edge whole. Never plane, drill or wedge such a door: ask us first.`,
          due: due.every("aftercare-doors"),
          often: everyText(rules.value("aftercare-doors")),
          rest: "aftercare-doors",
        }
      : null,
    wet
      ? {
          id: "sealant",
          what: "Look at the soft white joints round shower, basin and tiles",
          how: "Where a joint has come loose or gone black it lets water in: have it cut out and made anew.",
          due: due.every("aftercare-sealant"),
          often: everyText(rules.value("aftercare-sealant")),
          rest: "aftercare-sealant",
        }
      : null,
    paint
      ? {
          id: "repaint",
          what: "See whether walls and woodwork want painting again",
          how: `Used: ${paint}. The colours are on the handover record; small marks are touched in from the tins left with you.`,
          due: due.every("aftercare-repaint"),
          often: everyText(rules.value("aftercare-repaint")),
          rest: "aftercare-repaint",
        }
      : null,
  ]
  return cares
    .filter((care) => care !== null && care.due.length > 0)
    .map((care) => care!)
    .sort((a, b) => (a.due[0]! < b.due[0]! ? -1 : 1))
}

const paints = new Set(["emulsion", "white-emulsion", "moisture-emulsion", "trim", "varnish"])

function lastReady(programme: Programme, stage: string): IsoDate | null {
  const dates = programme.steps
    .filter(({ step }) => step.stage === stage)
    .map((each) => clockAt(each.ready, programme.zone).date)
    .sort()
  return dates[dates.length - 1] ?? null
}

/** Days due from the finish on, by an entry in months, within the years that aftercare is listed for. */
function dueDays(finish: IsoDate, rules: Rules) {
  const months = rules.value("aftercare-years") * 12
  const every = (id: string) => {
    const gap = rules.value(id)
    return Array.from({ length: Math.floor(months / gap) }, (_, index) =>
      monthsAfter(finish, gap * (index + 1)),
    )
  }
  return { every, once: (id: string) => every(id).slice(0, 1) }
}

function everyText(months: number): string {
  if (months === 12) return "every year"
  return months % 12 === 0 ? `every ${months / 12} years` : `every ${months} months`
}
