import { fixed, mmText, squareMetres } from "../../kernels/units.ts"
import type { Quantity, Task } from "../trade.ts"
import type { FloorInputs } from "./inputs.ts"
import { type FloorPlan, floorAreas } from "./plan-floor.ts"
import { wholeUp } from "./whole-up.ts"

/** What a floating floor takes: net, and gross before rounding to packs, rolls, boxes and tins. Spare packs are counted for the job. */
export function floorQuantities(task: Task<FloorInputs>, plan: FloorPlan): Quantity[] {
  const { job, input } = task
  const { rules } = job
  const { whole, laid } = floorAreas(plan)
  const line = (quantity: Omit<Quantity, "trade" | "room">): Quantity => ({
    trade: "floors",
    room: task.room.id,
    ...quantity,
  })
  return [
    line({
      what: "floor boards",
      product: plan.board.id,
      net: laid,
      gross: squareMetres(plan.layout.areas.bought),
      unit: "m2",
      from: boardsFrom(plan),
    }),
    line({
      what: "underlay",
      product: plan.underlay.id,
      net: whole,
      gross: plan.underlayTake.gross,
      unit: "m2",
      from: `${fixed(whole, 2)} m2 to the walls and ${rules.value("floor-underlay-waste")} % for cuts and laps`,
    }),
    line({
      what: "tape for underlay joints",
      product: job.chosen("floor-tape") ?? null,
      net: plan.underlayTake.joints,
      gross: plan.underlayTake.joints * (1 + rules.value("floor-underlay-waste") / 100),
      unit: "m",
      from: `${plan.underlayTake.strips - 1} joints between ${plan.underlayTake.strips} strips`,
    }),
    ...(plan.looseTongue > 0
      ? [
          line({
            what: "loose tongue, to lay back out of a doorway",
            product: null,
            net: plan.looseTongue / 1000,
            gross: plan.looseTongue / 1000,
            unit: "m",
            from: "rows wholly inside a doorway of the first row's wall; of the board maker",
          }),
        ]
      : []),
    ...profileLines(plan).map(line),
    ...deckLines(task, plan).map(line),
    ...(input.joints === "glued"
      ? [
          line({
            what: "glue for tongue and groove",
            product: job.chosen("floor-glue") ?? null,
            net: laid / rules.value("floor-glue-rate"),
            gross: laid / rules.value("floor-glue-rate"),
            unit: "l",
            from: `${fixed(laid, 2)} m2 at ${rules.value("floor-glue-rate")} m2 a litre`,
          }),
        ]
      : []),
    ...oilLines(task, plan).map(line),
  ]
}

function boardsFrom({ layout, board }: FloorPlan): string {
  const each = board.mix
    ? `of mixed lengths, ${board.mix.map(({ length }) => `${layout.lengths.filter((own) => own === length).length} of ${mmText(length)}`).join(", ")}`
    : `${fixed(squareMetres(board.width * board.length), 3)} m2 each`
  const brought =
    layout.brought.length > 0
      ? `, and ${layout.brought.length} offcut${layout.brought.length === 1 ? "" : "s"} of other rooms`
      : ""
  return `${layout.boards} boards by the row layout, ${each}${brought}`
}

/** Profiles over breaks where none is chosen that could be cut from lengths: told, but not bought. */
function profileLines({ breaks, profile }: FloorPlan): Omit<Quantity, "trade" | "room">[] {
  if (profile) return []
  return breaks.map(({ number, length }) => ({
    what: `movement profile over break ${number}`,
    product: null,
    net: length / 1000,
    gross: length / 1000,
    unit: "m",
    from: `the line from wall to wall, ${mmText(length)} mm`,
  }))
}

function deckLines({ job }: Task<FloorInputs>, { deck }: FloorPlan): Omit<Quantity, "trade" | "room">[] {
  if (!deck) return []
  const spare = job.rules.value("floor-screws-spare")
  return [
    {
      what: `deck screws, ${deck.screwLength} long`,
      product: job.chosen("floor-screws") ?? null,
      net: deck.screws,
      gross: wholeUp(deck.screws * (1 + spare / 100)),
      unit: "nr",
      from: `${deck.from}, and ${spare} % over`,
    },
  ]
}

function oilLines({ job, input }: Task<FloorInputs>, plan: FloorPlan): Omit<Quantity, "trade" | "room">[] {
  if (input.oilCoats === 0) return []
  const { laid } = floorAreas(plan)
  const rate = plan.oil?.rate ?? job.rules.value("floor-oil-rate")
  const litres = (laid * input.oilCoats) / rate
  return [
    {
      what: "floor oil",
      product: plan.oil?.id ?? null,
      net: litres,
      gross: litres,
      unit: "l",
      from: `${fixed(laid, 2)} m2, ${input.oilCoats} coat${input.oilCoats === 1 ? "" : "s"} at ${rate} m2 a litre`,
    },
  ]
}
