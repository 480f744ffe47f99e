import type { DoorEntry } from "../../../intake/schema/house.ts"
import type { Mm } from "../../../kernels/units.ts"
import type { DoorInWall, Room } from "../../../survey/room.ts"
import type { JobFacts } from "../../trade.ts"
import type { DoorAsk } from "../escape/asks.ts"
import { overFloor, type ThresholdFloors, thresholdFloors } from "../floors.ts"
import { type DoorInputs, doorWork } from "../inputs.ts"
import type { RulesRead } from "../rules-read.ts"
import { clearWidth } from "./clear-width.ts"
import { type CloserFit, closerFit } from "./closer.ts"
import { type AcrossPoint, fitAcross, fitUp, jambs, type Miss, type UpPoint } from "./fit.ts"
import { type GapRange, sideGap } from "./gap.ts"
import { type Hinges, type HingeZone, hingesOf } from "./hinges.ts"
import { type Leaf, leafToHang } from "./leaf.ts"
import { fitLining, type LiningFit, type PackingMiss } from "./lining-fit.ts"
import { type SealCut, sealCuts } from "./seals.ts"
import { type Threshold, threshold } from "./threshold.ts"

/** A doorway with all that is needed to hang its leaf. */
export interface HungDoor {
  door: DoorEntry
  home: Room
  here: DoorInWall | undefined
  work: DoorInputs
  ask: DoorAsk
  floors: ThresholdFloors
  /** Measured heights over the highest finished floor the leaf closes over, mm. */
  heights: Mm[]
  leaf: Leaf | null
  /** Null where no leaf is hung (it stays), or leaf or lining timber is not chosen. */
  fitted: Fitted | null
}

/** The leaf in its opening. */
export interface Fitted {
  leaf: Leaf
  gap: GapRange
  threshold: Threshold
  across: AcrossPoint[]
  up: UpPoint[]
  /** The new lining and its packing; null where the lining is kept. */
  lining: LiningFit | null
  misses: (Miss | PackingMiss)[]
  /** Size of the leaf as hung: narrowest and lowest, mm. */
  size: { width: Mm; height: Mm }
  hinges: Hinges | null
  /** Null where no closer is fitted. */
  closer: CloserFit | null
  /** Spindle: above the finished floor, from the top of the leaf as hung down its lock edge, from that edge, mm. */
  latch: { height: Mm; fromTop: Mm; backset: Mm }
  seals: SealCut[]
  clear: { before: Mm | null; after: Mm }
  /** Leaf proud of a kept rebate, mm (negative: behind it); null where there is no kept rebate. */
  proud: Mm | null
}

/** A doorway worked out: the leaf, its gaps and trims at each measured point, lining, hinges, latch, seals. */
export function hungDoor(
  door: DoorEntry,
  home: Room,
  about: { job: JobFacts; ask: DoorAsk; rules: RulesRead },
): HungDoor {
  const { job, ask, rules } = about
  const work = doorWork(door.work)
  const floors = thresholdFloors(door, home, job)
  const at = { home, floors, lowestGround: job.house.lowestGround }
  const heights = door.heights.map((height) => overFloor(height, door.heightsFrom, at))
  const leaf = leafToHang(work, ask, job, rules)
  const here = home.doors.find((each) => each.door.id === door.id)
  const base = { door, home, here, work, ask, floors, heights, leaf }
  const isReady = !makesLining(door) || liningOf(work, job) !== undefined
  return { ...base, fitted: leaf && isReady ? fittedLeaf({ ...base, leaf }, job, rules) : null }
}

/** True where a lining is to be made: nothing is kept. */
export function makesLining(door: DoorEntry): boolean {
  return door.lining === "new" || door.lining === "replace"
}

/** True where a seal of some kind is asked by the author or by guidance. */
export function needsSmoke(hung: Pick<HungDoor, "work" | "ask">): boolean {
  return hung.work.smoke || hung.ask.smoke
}

/** True where a closer is fitted. */
export function hasCloser(work: DoorInputs): boolean {
  return work.closer !== undefined && work.closer !== false
}

type ToFit = Omit<HungDoor, "fitted" | "leaf"> & { leaf: Leaf }

function fittedLeaf(hung: ToFit, job: JobFacts, rules: RulesRead): Fitted {
  const { leaf, work, floors } = hung
  const fire = leaf.minutes > 0
  const gap = sideGap(fire, work.certificate, rules)
  const about = { fire, smoke: fire && needsSmoke(hung), finish: floors.finish, work }
  const guessed = threshold({ ...about, leafWidth: leaf.width }, rules)
  const first = opened(hung, { gap, threshold: guessed }, job, rules)
  const width = Math.min(...first.across.map((point) => point.leaf))
  const foot = threshold({ ...about, leafWidth: width }, rules)
  const fit = opened(hung, { gap, threshold: foot }, job, rules)
  const size = { width, height: Math.min(...fit.up.map((point) => point.leaf)) }
  const undercut = fit.up[0]!.undercut
  const height = work.handleHeight ?? rules.value("door-handle-height")
  const latch = {
    height,
    fromTop: jambs(fit.up, hung.door.hinges).lock.leaf - (height - undercut),
    backset: work.backset ?? rules.value("door-backset"),
  }
  const hinges = hingesFor(hung, size, undercut, rules)
  return {
    leaf,
    gap,
    threshold: foot,
    ...fit,
    size,
    hinges,
    closer: hasCloser(work)
      ? closerFit(hung.door, { width: leaf.width, mass: leaf.mass, fire }, work, rules)
      : null,
    latch,
    seals: fire && hinges ? sealsFor(fit, hinges, hung.door.hinges) : [],
    clear: clearWidths(hung, { width, gap: fit.across[0]!.lockGap }, job, rules),
    proud: hung.door.lining === "keep" && hung.door.rebate ? leaf.thickness - hung.door.rebate : null,
  }
}

type Opened = Pick<Fitted, "across" | "up" | "lining" | "misses">

function opened(
  hung: ToFit,
  limits: { gap: GapRange; threshold: GapRange },
  job: JobFacts,
  rules: RulesRead,
): Opened {
  const { door, leaf, heights } = hung
  const { gap, threshold: foot } = limits
  const timber = liningOf(hung.work, job)
  if (makesLining(door) && timber) {
    const packing = {
      least: leaf.minutes > 0 ? rules.value("door-fire-packing-least") : 0,
      most: rules.value("door-packing-most"),
    }
    const lining = fitLining({
      widths: door.widths,
      heights,
      leaf,
      thickness: timber.thickness,
      gap,
      foot,
      packing,
    })
    return { across: lining.across, up: lining.up, lining, misses: lining.misses }
  }
  const across = fitAcross(door.widths, leaf.width, leaf.trim, gap)
  const up = fitUp(heights, leaf.height, leaf.trim, { head: gap, foot })
  return {
    across: across.points,
    up: up.points,
    lining: null,
    misses: [...across.misses, ...up.misses],
  }
}

/** The timber a lining is made of: the one named, else the job's. */
export function liningOf(work: DoorInputs, job: Pick<JobFacts, "product" | "chosen">) {
  return job.product(work.lining ?? job.chosen("lining"), "length")
}

/** The planted stop: the one named, else the job's. */
export function stopOf(work: DoorInputs, job: Pick<JobFacts, "product" | "chosen">) {
  return job.product(work.stop ?? job.chosen("stop"), "length")
}

function hingesFor(hung: ToFit, size: Fitted["size"], undercut: Mm, rules: RulesRead): Hinges | null {
  const { leaf, work, door } = hung
  if (leaf.mass === null) return null
  const zones = [
    ...work.keepOff.map((zone) => ({ from: zone.fromTop, to: zone.to, what: zone.what })),
    ...oldKeep(hung, size.height + undercut, rules),
  ]
  return hingesOf(
    {
      ...size,
      thickness: leaf.thickness,
      mass: leaf.mass,
      fire: leaf.minutes > 0,
      external: door.between.includes("outside"),
      closer: hasCloser(work),
      work,
      zones,
    },
    rules,
  )
}

/** The old keep in a kept lining, where the hand changes and the hinges come to that jamb. */
function oldKeep(hung: ToFit, topOverFloor: Mm, rules: RulesRead): HingeZone[] {
  const { door, work, floors, home } = hung
  const was = work.was
  const changes = was?.hinges !== undefined && door.hinges !== undefined && was.hinges !== door.hinges
  if (!changes || was?.latch === undefined || door.lining !== "keep") return []
  const keep = home.storey.deck + home.storey.finishNow + was.latch - floors.highest
  const half = rules.value("door-keep-length") / 2
  const from = topOverFloor - keep - half
  return [{ from, to: from + 2 * half, what: "old keep in the kept lining" }]
}

function sealsFor(fit: Opened, hinges: Hinges, side: "left" | "right" | undefined): SealCut[] {
  const width = Math.min(...fit.across.map((point) => point.opening))
  const { hinge, lock } = jambs(fit.up, side)
  return sealCuts({ width, lockJamb: lock.opening, hingeJamb: hinge.opening, headGap: hinge.headGap }, hinges)
}

function clearWidths(
  hung: ToFit,
  after: { width: Mm; gap: Mm },
  job: JobFacts,
  rules: RulesRead,
): Fitted["clear"] {
  const { work, leaf } = hung
  const stop = stopOf(work, job)?.thickness ?? rules.value("door-stop-thickness")
  const was = work.was
  return {
    before: was
      ? clearWidth({ leaf: was.width, gap: rules.value("door-gap-target"), stop, thickness: was.thickness })
      : null,
    after: clearWidth({ leaf: after.width, gap: after.gap, stop, thickness: leaf.thickness }),
  }
}
