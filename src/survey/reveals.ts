import { squareMetres } from "../kernels/units.ts"
import type { Reveal, WindowInRoom } from "./room.ts"

/**
 * The reveals of a room's openings, those with a depth: sides and head of a window (its sill is a board of its own), all four
 * faces of a roof window or hatch. Area = girth by depth, as if they stood square to the wall.
 */
export function revealsOf(windows: readonly WindowInRoom[]): Reveal[] {
  return windows
    .filter((window) => window.reveal > 0)
    .map((window) => {
      const girth = 2 * window.height + (window.kind === "window" ? 1 : 2) * window.width
      return {
        opening: window.id,
        wall: window.wall,
        inSlope: window.kind === "roof-window",
        girth,
        depth: window.reveal,
        area: squareMetres(girth * window.reveal),
      }
    })
}
