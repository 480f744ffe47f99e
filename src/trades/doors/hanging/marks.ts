import type { Mm } from "../../../kernels/units.ts"
import type { RulesRead } from "../rules-read.ts"
import { jambs } from "./fit.ts"
import type { Fitted, HungDoor } from "./hung-door.ts"

/** A line to be marked on leaf and lining: the same place told from each end. */
export interface Mark {
  what: string
  of: "hinge" | "spindle" | "bolt"
  /** From the top of the leaf as hung, down its own edge, mm. */
  onLeaf: Mm
  /** From the underside of the lining's head, down that jamb, mm. */
  onLining: Mm
  /** Over the highest finished floor, mm. */
  overFloor: Mm
}

/** Hinge tops on the hinge side; spindle and keep, and the bolt below it, on the lock side; in the order they are marked. */
export function marksOf(hung: Pick<HungDoor, "door" | "work">, fitted: Fitted, rules: RulesRead): Mark[] {
  const { hinge, lock } = jambs(fitted.up, hung.door.hinges)
  const mark = (what: string, of: Mark["of"], onLeaf: Mm): Mark => {
    const { headGap, opening } = of === "hinge" ? hinge : lock
    return { what, of, onLeaf, onLining: onLeaf + headGap, overFloor: opening - headGap - onLeaf }
  }
  const hinges = (fitted.hinges?.tops ?? []).map((top, n) => mark(`Hinge ${n + 1}, top`, "hinge", top))
  const { fromTop } = fitted.latch
  const spindle = mark("Spindle and keep", "spindle", fromTop)
  const bolt = hasBolt(hung.work)
    ? [mark("Bolt and its keep", "bolt", fromTop + rules.value("door-bolt-below"))]
    : []
  return [...hinges, spindle, ...bolt]
}

/** True where a second keep is let in below the latch's: a thumb-turn bolt, or a lock beside a latch. */
export function hasBolt(work: HungDoor["work"]): boolean {
  return isWanted(work.thumbTurn) || (isWanted(work.lock) && isWanted(work.latch))
}

function isWanted(fitting: string | boolean | undefined): boolean {
  return fitting !== undefined && fitting !== false
}
