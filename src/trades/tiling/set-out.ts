import type { Mm } from "../../kernels/units.ts"

/** How tiles run across a width or up a height. */
export interface SetOut {
  /** Whole tiles. */
  whole: number
  /** Cut tile at the beginning (left or foot) and at the end (right or top), mm; null where there is none. */
  first: Mm | null
  last: Mm | null
  /** Where it was set out from, in words. */
  from: string
  /** All tiles of a row or column, cut ones included. */
  count: number
}

interface Field {
  /** Clear width to be tiled, open joints at both ends taken off, mm. */
  width: Mm
  tile: Mm
  joint: Mm
}

/**
 * Tiles set out from the centre: a joint or a tile on the centre line, whichever leaves no cut or the larger cuts.
 * Both end cuts are equal and not less than half a tile, unless the field holds no more than one tile.
 */
export function centred(field: Field): SetOut {
  if (field.width <= field.tile) return single(field)
  const onJoint = side(field, (field.width - field.joint) / 2)
  const onTile = side(field, (field.width - field.tile) / 2 - field.joint)
  const joint = { whole: 2 * onJoint.whole, cut: onJoint.cut, from: "a joint on the centre" }
  const tile = { whole: 2 * onTile.whole + 1, cut: onTile.cut, from: "a tile on the centre" }
  const best = cutRank(joint.cut) >= cutRank(tile.cut) ? joint : tile
  return {
    whole: best.whole,
    first: best.cut,
    last: best.cut,
    from: best.from,
    count: best.whole + (best.cut === null ? 0 : 2),
  }
}

/** Tiles set out from a whole one at one end, with the cut at the other. */
export function fromEnd(field: Field, wholeAt: "first" | "last"): SetOut {
  if (field.width <= field.tile) return single(field)
  const { whole, cut } = side(field, field.width)
  const count = whole + (cut === null ? 0 : 1)
  if (wholeAt === "first") return { whole, first: null, last: cut, from: "a whole tile first", count }
  return { whole, first: cut, last: null, from: "a whole tile last", count }
}

/** Where each tile of a row or column begins and ends, mm from the beginning of the field. */
export function spansOf(
  { whole, first, last, count }: SetOut,
  { tile, joint }: Pick<Field, "tile" | "joint">,
) {
  const sizes = [first, ...Array.from({ length: whole }, () => tile), last].filter((size) => size !== null)
  return sizes.slice(0, count).map((size, index) => {
    const from = sizes.slice(0, index).reduce((sum, each) => sum + each + joint, 0)
    return { from, to: from + size }
  })
}

/** Least cut of a setting out, mm; null where every tile is whole. */
export function leastCut({ first, last }: SetOut): Mm | null {
  const cuts = [first, last].filter((cut) => cut !== null)
  return cuts.length > 0 ? Math.min(...cuts) : null
}

/** Whole tiles and the cut left over on one side of where setting out begins. */
function side({ tile, joint }: Field, reach: Mm): { whole: number; cut: Mm | null } {
  const whole = Math.max(0, Math.floor((reach + joint) / (tile + joint) + 1e-9))
  const left = reach - whole * (tile + joint)
  return { whole, cut: left > 1e-6 ? left : null }
}

function single(field: Field): SetOut {
  const isWhole = field.width === field.tile
  return {
    whole: isWhole ? 1 : 0,
    first: isWhole ? null : field.width,
    last: null,
    from: "one tile",
    count: 1,
  }
}

function cutRank(cut: Mm | null): number {
  return cut ?? Number.POSITIVE_INFINITY
}
