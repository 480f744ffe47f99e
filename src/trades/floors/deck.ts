import { boundsOf, regionPerimeter } from "../../kernels/polygon/measure.ts"
import type { Region } from "../../kernels/polygon/region.ts"
import { sectionAt } from "../../kernels/polygon/strips.ts"
import { type Mm, metres } from "../../kernels/units.ts"
import type { Rules } from "../../rulebook/rules.ts"
import type { Room } from "../../survey/room.ts"
import { areaOfAll, wallFrame } from "./area.ts"
import { joistWall } from "./direction.ts"
import type { FloorInputs } from "./inputs.ts"
import { regionToFrame } from "./layout/frame.ts"
import { wholeUp } from "./whole-up.ts"

/** One joist under the room. */
export interface JoistLine {
  /** From the wall the joists run along, mm. */
  from: Mm
  /** Length of deck over it in the room, mm. */
  length: Mm
  screws: number
}

/** How the deck is screwed down. */
export interface DeckFixing {
  screws: number
  screwLength: Mm
  is: "boards" | "sheets"
  thickness: Mm
  boardWidth: Mm
  centres: Mm
  /** Joist by joist where their direction and first position are known; else empty, and the count is by area. */
  joists: JoistLine[]
  /** The wall they run along, where known. */
  along: number | undefined
  /** True if thickness, width and centres were all measured. */
  measured: boolean
  /** Where the count comes from, in words. */
  from: string
}

/**
 * Screws for a deck fixed down again.
 * Boards: two at each crossing of board and joist (common practice). Sheets: by the specification clause, `floor-sheet-screws-field`
 * along each joist and `floor-sheet-screws-edge` round the room.
 * @param area figures to the walls, on the plan
 */
export function deckFixing(
  room: Room,
  area: readonly Region[],
  input: FloorInputs,
  rules: Rules,
): DeckFixing {
  const is = input.deck?.is ?? "boards"
  const thickness = input.deck?.thickness ?? rules.value("floor-deck-thickness")
  const boardWidth = input.deck?.boardWidth ?? rules.value("floor-deck-board-width")
  const centres = room.storey.joists?.centres ?? rules.value("floor-joist-centres")
  const apart = is === "boards" ? boardWidth : rules.value("floor-sheet-screws-field")
  const each = is === "boards" ? rules.value("floor-screws-per-crossing") : 1
  const lines = joistLines(room, area, centres).map((line) => ({
    ...line,
    screws: wholeUp(line.length / apart) * each,
  }))
  const onJoists =
    lines.length > 0
      ? lines.reduce((sum, line) => sum + line.screws, 0)
      : wholeUp((areaOfAll(area) / (metres(centres) * metres(apart))) * each)
  const round =
    is === "sheets"
      ? wholeUp(
          area.reduce((sum, region) => sum + regionPerimeter(region), 0) /
            rules.value("floor-sheet-screws-edge"),
        )
      : 0
  return {
    screws: onJoists + round,
    screwLength: Math.round(thickness * rules.value("floor-screw-length")),
    is,
    thickness,
    boardWidth,
    centres,
    joists: lines,
    along: lines.length > 0 ? joistWall(room)?.number : undefined,
    measured: input.deck !== undefined && (is === "sheets" || input.deck.boardWidth !== undefined),
    from: lines.length > 0 ? `${lines.length} joists at ${centres}` : `by area, joists at ${centres}`,
  }
}

function joistLines(room: Room, area: readonly Region[], centres: Mm): Omit<JoistLine, "screws">[] {
  const wall = joistWall(room)
  if (!wall) return []
  const first = room.storey.joists?.firstFrom ?? 0
  const floor = area.map((region) => regionToFrame(wallFrame(wall), region))
  const box = boundsOf(floor.flatMap((region) => region.outline))
  const lines: Omit<JoistLine, "screws">[] = []
  for (let from = first; from < box.top; from += centres) {
    const length = floor
      .flatMap((region) => sectionAt(region, from))
      .reduce((sum, stretch) => sum + stretch.to - stretch.from, 0)
    if (length > 0) lines.push({ from, length })
  }
  return lines
}
