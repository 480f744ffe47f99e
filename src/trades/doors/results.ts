import type { HungDoor } from "./hanging/hung-door.ts"
import { leafText } from "./hanging/leaf.ts"

/** One row of the door schedule: plain text and figures with stable keys, ready for CSV. */
export interface ScheduleRow {
  door: string
  name: string
  room: string
  from: string
  to: string
  guidance: string
  selfClosing: string
  why: string
  clause: string
  hang: string
  hung: string
  product: string
  leafWidth: number | null
  leafHeight: number | null
  leafThickness: number | null
  massKg: number | null
  hungWidth: number | null
  hungHeight: number | null
  trimHinge: number | null
  trimLock: number | null
  trimHead: number | null
  trimFoot: number | null
  undercut: number | null
  lining: string
  hinges: number | null
  hingeLength: number | null
  hingeGrade: number | null
  hand: string
  latchHeight: number | null
  closer: string
  thumbTurn: string
  smoke: string
  clearBefore: number | null
  clearAfter: number | null
  question: string
}

/** The schedule's row of one doorway. */
export function scheduleRow(hung: HungDoor): ScheduleRow {
  const { door, home, ask, work, leaf, fitted } = hung
  const most = (values: number[] | undefined) => (values ? round(Math.max(...values)) : null)
  const yes = (value: unknown) => (value ? "yes" : "no")
  return {
    door: door.id,
    name: door.name,
    room: home.id,
    from: door.between[0],
    to: door.between[1],
    guidance: ask.minimumText,
    selfClosing: yes(ask.selfClosing),
    why: ask.why,
    clause: ask.clause,
    hang: work.hang,
    hung: leafText(leaf, door, work),
    product: leaf?.product ?? "",
    leafWidth: leaf?.width ?? null,
    leafHeight: leaf?.height ?? null,
    leafThickness: leaf?.thickness ?? null,
    massKg: leaf?.mass ?? null,
    hungWidth: fitted ? round(fitted.size.width) : null,
    hungHeight: fitted ? round(fitted.size.height) : null,
    trimHinge: most(fitted?.across.map((point) => point.hingeTrim)),
    trimLock: most(fitted?.across.map((point) => point.lockTrim)),
    trimHead: most(fitted?.up.map((point) => point.headTrim)),
    trimFoot: most(fitted?.up.map((point) => point.footTrim)),
    undercut: fitted ? round(fitted.up[0]!.undercut) : null,
    lining: door.lining,
    hinges: fitted?.hinges?.count ?? null,
    hingeLength: fitted?.hinges?.length ?? null,
    hingeGrade: fitted?.hinges?.grade ?? null,
    hand: door.hinges ?? "",
    latchHeight: fitted?.latch.height ?? null,
    closer: yes(work.closer),
    thumbTurn: yes(work.thumbTurn),
    smoke: yes(work.smoke),
    clearBefore: fitted?.clear.before ?? null,
    clearAfter: fitted ? round(fitted.clear.after) : null,
    question: ask.question ?? "",
  }
}

/** Measures of one doorway as plain data, half millimetres kept. */
export function doorResult(hung: HungDoor): Record<string, unknown> {
  const { fitted, floors, heights } = hung
  return {
    ...scheduleRow(hung),
    floorHighest: round(floors.highest),
    floorRise: round(floors.rise),
    heightsOverFloor: heights.map(round),
    across: fitted?.across.map(roundAll) ?? [],
    up: fitted?.up.map(roundAll) ?? [],
    packingSides: fitted?.lining?.packingSides.map(roundAll) ?? [],
    packingHead: fitted?.lining?.packingHead.map(roundAll) ?? [],
    liningWidth: fitted?.lining ? round(fitted.lining.internalWidth) : null,
    liningHeight: fitted?.lining ? round(fitted.lining.internalHeight) : null,
    hingeTops: fitted?.hinges?.tops.map(round) ?? [],
    adjustedMassKg: fitted?.hinges ? round(fitted.hinges.mass.adjusted) : null,
    latchFromTop: fitted ? round(fitted.latch.fromTop) : null,
    backset: fitted?.latch.backset ?? null,
    threshold:
      fitted?.threshold.demands.map((each) => ({
        by: each.by,
        least: each.least ?? null,
        most: each.most ?? null,
      })) ?? [],
    seals: fitted?.seals.map((cut) => ({ where: cut.where, lengths: cut.lengths.map(round) })) ?? [],
  }
}

/** Two decimals are kept. */
const hundredths = 100

function round(value: number): number {
  return Math.round(value * hundredths) / hundredths
}

function roundAll(row: object): Record<string, unknown> {
  return Object.fromEntries(
    Object.entries(row).map(([key, value]) => [key, typeof value === "number" ? round(value) : value]),
  )
}
