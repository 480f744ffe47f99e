import type { ProductOf } from "../../intake/schema/products.ts"
import type { Litres, SquareMetres } from "../../kernels/units.ts"
import { type DryingProcessId, dryingProcesses } from "../../rulebook/drying.ts"
import type { Rules } from "../../rulebook/rules.ts"
import type { JobFacts, Task } from "../trade.ts"
import type { DecoratingInputs, PaintUse } from "./inputs.ts"
import { type Dilution, mistCoat } from "./mist-coat.ts"
import type { PaintedPart, Surface } from "./surfaces.ts"
import { type Coat, clearSystem, coatOrder, plasterSystem, processOf, woodSystem } from "./systems.ts"
import type { WoodItem } from "./woodwork.ts"

/** One coat on one surface: what, how much, and what must pass before the next. */
export interface CoatLine {
  coat: Coat
  surface: string
  part: PaintedPart
  /** For plaster: painted as wall or as ceiling. */
  as?: "wall" | "ceiling"
  area: SquareMetres
  /** For trim by length: metres; for a leaf's face: 0. */
  length: number
  colour: string
  product: ProductOf<"liquid"> | undefined
  /** Where no product is chosen. */
  missing?: PaintUse
  /** m2 a litre; of a mist coat, a litre of mix. */
  rate: number
  rateFrom: "maker" | string
  /** Litres as they come from the tin, without waste; water added; both unrounded. */
  paint: Litres
  water: Litres
  process: DryingProcessId
}

/** Every coat on every surface of a room, in the order they go on. */
export function coatLines(task: Task<DecoratingInputs>, surfaces: Surface[], wood: WoodItem[]): CoatLine[] {
  const lines = [
    ...surfaces.flatMap((surface) => plasterLines(task, surface)),
    ...wood.flatMap((each) => woodLines(task, each)),
  ]
  return lines.sort((a, b) => coatOrder.indexOf(a.coat.key) - coatOrder.indexOf(b.coat.key))
}

/** The parts of a mist coat: the author's, else by rule. */
export function dilutionOf(input: DecoratingInputs, rules: Rules): Dilution {
  return input.mist ?? { paint: rules.value("decor-mist-paint"), water: rules.value("decor-mist-water") }
}

/** True where paint must stand moisture: as written, else in bathrooms. */
export function isWet(task: Task<DecoratingInputs>): boolean {
  return task.input.wet ?? task.room.use === "bathroom"
}

/** A paint by name and colour, the colour once. */
export function paintName(product: ProductOf<"liquid">): string {
  const { name, colour } = product
  return name.toLowerCase().includes(colour.toLowerCase()) ? name : `${name}, ${colour}`
}

/** The product for a use: the room's, else the job's, else the white for what is white. */
export function paintFor(
  use: PaintUse,
  input: DecoratingInputs,
  job: JobFacts,
): ProductOf<"liquid"> | undefined {
  const own = input.products[use] ?? job.chosen(use)
  if (own) return job.product(own, "liquid")
  if (use === "mist" || use === "ceilingWhite") return paintFor("white", input, job)
  return undefined
}

function plasterLines(task: Task<DecoratingInputs>, surface: Surface): CoatLine[] {
  const { input, job } = task
  const colourCoats = job.rules.value("decor-coats-wall") + (input.deepColour ? 1 : 0)
  return plasterSystem({ as: surface.as, state: surface.state, wet: isWet(task), colourCoats }).map(
    (coat) => {
      const own =
        coat.key.startsWith("colour") && surface.product ? job.product(surface.product, "liquid") : undefined
      const colour = isFinish(coat) ? surface.colour : "white"
      const { name, part, as, area } = surface
      return line(task, coat, { name, part, as, area, length: 0, colour }, own)
    },
  )
}

function woodLines(task: Task<DecoratingInputs>, wood: WoodItem): CoatLine[] {
  const { state, colour } = task.input.woodwork
  if (state === "none") return []
  const on = {
    name: wood.what,
    part: wood.part,
    area: wood.area,
    length: wood.length,
    colour: wood.finish === "clear" ? "clear" : colour,
  }
  const system =
    wood.finish === "clear" ? clearSystem(task.job.rules.value("decor-coats-clear")) : woodSystem(state)
  return system.map((coat) => line(task, coat, on))
}

interface PaintedOn {
  name: string
  part: PaintedPart
  as?: "wall" | "ceiling"
  area: SquareMetres
  length: number
  colour: string
}

function line(task: Task<DecoratingInputs>, coat: Coat, on: PaintedOn, own?: ProductOf<"liquid">): CoatLine {
  const product = own ?? paintFor(coat.use, task.input, task.job)
  const { rate, rateFrom } = rateOf(coat, product, task.job.rules)
  const mix = coat.mist
    ? mistCoat(on.area, rate, dilutionOf(task.input, task.job.rules))
    : { paint: on.area / rate, water: 0 }
  return {
    coat,
    surface: on.name,
    part: on.part,
    ...(on.as ? { as: on.as } : {}),
    area: on.area,
    length: on.length,
    colour: on.colour,
    product,
    ...(product ? {} : { missing: coat.use }),
    rate,
    rateFrom,
    paint: mix.paint,
    water: mix.water,
    process: processOf(coat, product?.base ?? "water"),
  }
}

/** The maker's rate goes first, except for a mist coat: its rate is that of the mix on bare plaster. */
function rateOf(
  coat: Coat,
  product: ProductOf<"liquid"> | undefined,
  rules: Rules,
): { rate: number; rateFrom: string } {
  if (coat.mist) return { rate: rules.value("decor-rate-mist"), rateFrom: "decor-rate-mist" }
  if (product?.rate) return { rate: product.rate, rateFrom: "maker" }
  const id = rateRule[coat.use]
  return { rate: rules.value(id), rateFrom: id }
}

const rateRule: Record<PaintUse, string> = {
  mist: "decor-rate-mist",
  white: "decor-rate-emulsion",
  ceilingWhite: "decor-rate-emulsion",
  wallColour: "decor-rate-emulsion",
  moistureColour: "decor-rate-moisture",
  moistureWhite: "decor-rate-moisture",
  bond: "decor-rate-primer",
  stainBlock: "decor-rate-primer",
  primer: "decor-rate-primer",
  undercoat: "decor-rate-undercoat",
  trim: "decor-rate-trim",
  doorFinish: "decor-rate-clear",
}

function isFinish(coat: Coat): boolean {
  return ["wallColour", "moistureColour", "ceilingWhite", "moistureWhite"].includes(coat.use)
}

/** What a coat waits for besides its hours, in words. */
export function untilOf(process: DryingProcessId): string {
  return dryingProcesses[process].until
}
