import { dryingRests } from "../../rulebook/drying.ts"
import { onPaper } from "../rests.ts"
import type { Task } from "../trade.ts"
import { cautionRests, decoratingCautions } from "./cautions.ts"
import type { CoatLine } from "./coats.ts"
import type { DecoratingInputs } from "./inputs.ts"
import type { RoomPaint } from "./room-paint.ts"

/** Ids of the rulebook entries that a room's decorating rests on. */
export function decoratingRests(task: Task<DecoratingInputs>, paint: RoomPaint): string[] {
  const { lines } = paint
  const processes = [...new Set(lines.map((line) => line.process)), "caulk" as const]
  const ids = [
    "decor-void-deducted",
    "decor-waste",
    "decor-above-dew-point",
    ...cautionRests,
    ...coatRests(task, lines),
    ...woodRests(task, paint),
    ...outputRests(lines),
    ...processes.flatMap(dryingRests),
  ]
  return [...new Set(ids)]
}

/** Those of them behind the figures on the room's sheet: areas, rates, thinning, hours of waiting, limits in its cautions. */
export function sheetRests(task: Task<DecoratingInputs>, paint: RoomPaint): string[] {
  const { lines } = paint
  const cautions = new Set(decoratingCautions(task, lines).map((each) => each.id))
  const ids = [
    "decor-void-deducted",
    "decor-waste",
    "decor-above-dew-point",
    ...coatRests(task, lines),
    ...woodRests(task, paint),
    ...(cautions.has("solvent-limit") ? cautionRests.filter((id) => id.startsWith("decor-voc")) : []),
    ...lines.flatMap((line) => dryingRests(line.process)),
  ]
  return onPaper([...new Set(ids)])
}

function coatRests({ input }: Task<DecoratingInputs>, lines: CoatLine[]): string[] {
  const rates = lines.map((line) => line.rateFrom).filter((id) => id !== "maker")
  const solvent = lines.some((line) => line.product && line.product.base !== "water")
  return [
    ...rates,
    ...(lines.some((line) => line.coat.mist) && !input.mist ? ["decor-mist-paint", "decor-mist-water"] : []),
    ...(lines.some((line) => line.coat.key === "colour-last") ? ["decor-coats-wall"] : []),
    ...(lines.some((line) => line.coat.key === "clear-1") ? ["decor-coats-clear"] : []),
    ...(solvent ? ["solvent-before-bed"] : []),
  ]
}

function woodRests({ facts, input }: Task<DecoratingInputs>, { wood }: RoomPaint): string[] {
  const has = (what: string) => wood.some((each) => each.what.includes(what))
  return [
    ...(wood.length > 0 ? ["decor-girth-by-length"] : []),
    ...(has("edges") ? ["decor-leaf-thickness"] : []),
    ...(has("Skirting") && !facts.skirting && input.boardDepth === undefined ? ["decor-skirting-girth"] : []),
    ...(has("Architrave") && !facts.architrave ? ["decor-architrave-girth"] : []),
  ]
}

/** Output rates, which the programme's hours rest on. */
function outputRests(lines: CoatLine[]): string[] {
  const trim = lines.some((line) => line.length > 0)
  return [
    "decor-out-set-up",
    "decor-out-prepare",
    ...(lines.some((line) => line.coat.mist) ? ["decor-out-mist"] : []),
    ...["decor-out-wall", "decor-out-ceiling"],
    ...(trim ? ["decor-out-trim", "decor-out-caulk"] : []),
    ...(lines.some((line) => line.part === "leaf") ? ["decor-out-leaf"] : []),
  ]
}
