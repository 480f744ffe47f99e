import type { Litres, SquareMetres } from "../../kernels/units.ts"
import type { CoatLine } from "./coats.ts"
import type { PaintedPart } from "./surfaces.ts"

/** Surfaces that take one coat of one paint together: a row on paper, a round of the decorator. */
export interface CoatGroup {
  /** `Walls and slopes`; `Woodwork`; with the colour where the paint's name does not tell it: `Wall 3, wall colour 2`. */
  name: string
  lines: CoatLine[]
  /** Sums, unrounded. */
  area: SquareMetres
  paint: Litres
  water: Litres
}

type Kind = "ceiling" | "wall" | "reveal" | "wood" | "leaf"

/**
 * The lines of one coat as groups, in the order they are painted: ceilings, walls of one colour with the slopes that take
 * it, reveals, woodwork, doors.
 */
export function coatGroups(lines: readonly CoatLine[]): CoatGroup[] {
  const groups = new Map<string, CoatLine[]>()
  for (const line of lines) {
    const key = [kindOf(line), line.colour, line.product?.id ?? ""].join("/")
    groups.set(key, [...(groups.get(key) ?? []), line])
  }
  const sum = (same: CoatLine[], pick: (line: CoatLine) => number) =>
    same.reduce((total, line) => total + pick(line), 0)
  return [...groups.values()].map((same) => ({
    name: nameOf(same),
    lines: same,
    area: sum(same, (line) => line.area),
    paint: sum(same, (line) => line.paint),
    water: sum(same, (line) => line.water),
  }))
}

/** Names of groups as part of a sentence: `level ceiling, walls and slopes`. */
export function groupWords(groups: readonly CoatGroup[]): string {
  return groups.map(({ name }) => name.charAt(0).toLowerCase() + name.slice(1)).join("; ")
}

function kindOf({ part, as }: CoatLine): Kind {
  if (part === "reveal" || part === "leaf") return part
  if (part === "lining" || part === "trim") return "wood"
  return as ?? "wall"
}

function nameOf(lines: CoatLine[]): string {
  const { colour, surface, product } = lines[0]!
  const parts = new Set(lines.map((line) => line.part))
  const name = lines.length === 1 && !parts.has("leaf") ? surface : partsWords(parts)
  const isTold = colour === "white" || colour === "clear" || product?.colour.includes(colour)
  return isTold ? name : `${name}, ${colour}`
}

function partsWords(parts: ReadonlySet<PaintedPart>): string {
  if (parts.has("leaf")) return "Doors"
  if (parts.has("reveal")) return "Window reveals"
  if (parts.has("trim") || parts.has("lining")) return "Woodwork"
  const plain = parts.has("wall") ? "Walls" : parts.has("ceiling") ? "Level ceiling" : null
  if (!plain) return "Slopes"
  return parts.has("slope") ? `${plain} and slopes` : plain
}
