/**
 * The stages of finishing a storey, in the house's order. A step of a later stage in a room waits for every step of the
 * earlier stages in that room (common practice; the programme adds what goes across rooms).
 */
export const stages = [
  "prepare", // survey again, protect, strip, first fix made good
  "dry-out", // new plaster to even pale colour
  "mist", // mist coat on new plaster
  "white", // white everywhere, behind radiators first
  "tile", // tiling and its cure
  "heat", // radiators hung, heating on, room within limits
  "deck", // deck fixed to joists, flat, read
  "acclimatise", // boards in the room
  "floor", // underlay and boards
  "linings", // door linings, stops
  "hang", // leaves hung, gapped
  "second-fix", // skirting, architrave, sanitaryware, electrical covers
  "fill", // fill, caulk, rub down
  "woodwork", // coats on trim and doors
  "last-coat", // last wall coat
  "covers-off", // protection off, plates back, clean
  "oil", // floor oil, from the far room to the stair
  "nosings", // nosings and stairs last
  "snag", // check, snag, first night
] as const

/** A stage of the work. */
export type Stage = (typeof stages)[number]

/** Place of a stage in the order, from 0. */
export function stageRank(stage: Stage): number {
  return stages.indexOf(stage)
}
