import type { Product } from "../../intake/schema/products.ts"
import type { Finding } from "../../kernels/finding.ts"
import { boundsOf } from "../../kernels/polygon/measure.ts"
import { type Region, regionOf } from "../../kernels/polygon/region.ts"
import type { Mm } from "../../kernels/units.ts"
import type { JobFacts, RoomFacts, Task } from "../trade.ts"
import { areaOfAll, type FloorArea, floorArea } from "./area.ts"
import { type Break, breaksOn, breaksToWrite, heldTogether, partedBy } from "./breaks.ts"
import { type DeckFixing, deckFixing } from "./deck.ts"
import { acrossWall, alongWall, type Direction, direction } from "./direction.ts"
import { handAfter } from "./hand.ts"
import type { FloorInputs } from "./inputs.ts"
import type { Offcut } from "./layout/boards.ts"
import { toFrame } from "./layout/frame.ts"
import { type PackedLength, packsHolding } from "./layout/packs.ts"
import { looseTongue } from "./loose-tongue.ts"
import * as messages from "./messages.ts"
import { type Movement, movement } from "./movement.ts"
import {
  type CheckedReading,
  checkedReadings,
  type ReadingLimit,
  readingFindings,
  readingLimits,
} from "./readings.ts"
import { type FloorLayout, layRows, type RowTask } from "./rows.ts"
import { type Underlay, underlayOf } from "./underlay.ts"

/** What a room hands on of its boards. */
type BoardsHandedOn = NonNullable<RoomFacts["floorBoards"]>

/** A product of one kind. */
type Of<K extends Product["kind"]> = Extract<Product, { kind: K }>

/** Everything worked out for a floating floor in one room; work and sheets are made from it. */
export interface FloorPlan {
  board: Of<"board">
  underlay: Of<"roll">
  oil: Of<"liquid"> | undefined
  direction: Direction
  movement: Movement
  area: FloorArea
  /** Movement breaks, and the profile that covers them. */
  breaks: Break[]
  profile: Of<"length"> | undefined
  layout: FloorLayout
  /** Offcuts in hand for the next room of these boards. */
  left: Offcut[]
  /** Boards of each length opened so far over all rooms, and packs to bring in besides those that rooms before opened. */
  taken: number[]
  packs: number
  deck: DeckFixing | undefined
  underlayTake: Underlay
  limits: ReadingLimit[]
  readings: CheckedReading[]
  /** Thickness over the deck, mm. */
  buildUp: Mm
  /** Where boards are laid back out of a doorway, groove to groove: loose tongue, mm. */
  looseTongue: Mm
  findings: Finding[]
}

/** A floor is planned once, for its work and again for its sheet: laying rows is the dearest of a room's calculations. */
const planned = new WeakMap<Task<FloorInputs>, PlannedFloor>()

/** A floating floor worked out, or the findings that keep it from being so. The same task gives the same plan. */
export function planFloor(task: Task<FloorInputs>): PlannedFloor {
  const before = planned.get(task)
  if (before) return before
  const now = worked(task)
  planned.set(task, now)
  return now
}

interface PlannedFloor {
  plan: FloorPlan | null
  findings: Finding[]
}

function worked(task: Task<FloorInputs>): PlannedFloor {
  const { job, room, input } = task
  const { board, underlay, oil } = products(job, input)
  const way = direction(room, input, task.at)
  const findings = [...way.findings, ...wrongHoles(task), ...wrongHeld(task), ...wrongBreaks(task)]
  if (!board) findings.push(messages.noProduct(keyed(task, "board"), "floor board", "floor-board"))
  if (!underlay) findings.push(messages.noProduct(keyed(task, "underlay"), "underlay", "floor-underlay"))
  if (!board || !underlay) return { plan: null, findings }
  const moves = movementOf(task, way, board)
  const { area, breaks } = areaOf(task, moves)
  if (area.laid.length === 0) {
    return { plan: null, findings: [...findings, messages.nothingToLay(keyed(task, "gap"), moves.gap)] }
  }
  const before = handedOn(task, board)
  const layout = layoutOf(task, { area: area.laid, way, board, hand: before.left })
  const taken = takenWith(layout, board, before.taken)
  const lengths = packedLengths(board)
  const limits = readingLimits(room, moves, job.rules)
  const plan: FloorPlan = {
    board,
    underlay,
    oil,
    direction: way,
    movement: moves,
    area,
    breaks,
    profile: job.product(job.chosen("floor-break-profile"), "length"),
    layout,
    left: handAfter(before.left, room.id, layout),
    taken,
    packs: packsHolding(taken, lengths) - packsHolding(before.taken, lengths),
    deck:
      input.deckScrews && room.storey.base !== "concrete"
        ? deckFixing(room, area.whole, input, job.rules)
        : undefined,
    underlayTake: underlayOf(area.whole, layout.frame, underlay.width, job.rules),
    limits,
    readings: checkedReadings(room, limits),
    buildUp: board.thickness + underlay.thickness,
    looseTongue: looseTongue(layout, moves.gap),
    findings: [],
  }
  findings.push(...judged(task, plan), ...readingFindings(room, limits, job.rules))
  return { plan: { ...plan, findings }, findings }
}

/** What a room's floor means for other trades; `null` input is a room where nothing was written. */
export function floorFacts(task: Task<FloorInputs | null>): RoomFacts {
  const { input, room } = task
  const now = room.storey.finishNow
  if (!input) return { floorBuildUp: now, floorFinish: now > 0 ? "carpet" : "old" }
  if (input.finish === "stays") return { floorBuildUp: input.buildUp ?? now, floorFinish: input.stays }
  if (input.finish === "none") return { floorBuildUp: input.buildUp ?? 0, floorFinish: "old" }
  if (input.finish === "by-tiler") {
    return input.buildUp === undefined
      ? { floorFinish: "tile" }
      : { floorBuildUp: input.buildUp, floorFinish: "tile" }
  }
  const { plan } = planFloor({ ...task, input })
  if (!plan) return { floorFinish: "oak" }
  return {
    floorBuildUp: plan.buildUp,
    floorGap: plan.movement.gap,
    floorFinish: "oak",
    floorBoards: {
      product: plan.board.id,
      taken: plan.taken,
      left: plan.left,
      brought: plan.layout.brought.map((offcut) => offcut.mark),
    },
  }
}

function products(job: JobFacts, input: FloorInputs) {
  return {
    board: job.product(input.board ?? job.chosen("floor-board"), "board"),
    underlay: job.product(input.underlay ?? job.chosen("floor-underlay"), "roll"),
    oil: job.product(input.oil ?? job.chosen("floor-oil"), "liquid"),
  }
}

function movementOf(task: Task<FloorInputs>, way: Direction, board: Of<"board">): Movement {
  const { input, room, job } = task
  const held = input.heldAlong.length > 0
  return movement(
    room,
    { wall: way.wall, fields: fieldsOf(task), moves: board.moves, held, written: input.gap },
    job,
  )
}

/** The room's outline, parted along its breaks. */
function fieldsOf({ room, input }: Task<FloorInputs>): Region[] {
  const outline = [regionOf(room.outline)]
  return partedBy(breaksOn(room, input, outline), outline, 0)
}

function areaOf({ room, input, job }: Task<FloorInputs>, { gap }: Movement) {
  const area = floorArea(room, { gap, into: input.into }, job.rules)
  const breaks = breaksOn(room, input, area.whole)
  return { area: { ...area, laid: partedBy(breaks, area.laid, gap) }, breaks }
}

/** What the last room before this one with the same boards handed on. */
function handedOn({ job, room }: Task<FloorInputs>, board: Of<"board">): BoardsHandedOn {
  const index = job.house.rooms.findIndex((other) => other.id === room.id)
  const before = job.house.rooms.slice(0, Math.max(0, index)).flatMap((other) => {
    const boards = job.passed.get(other.id)?.floorBoards
    return boards?.product === board.id ? [boards] : []
  })
  return before.at(-1) ?? { product: board.id, taken: [], left: [], brought: [] }
}

/** Rows are laid once for the same floor: the plan is asked for what it passes on, for its work, and again where a variation leaves it be. */
const laidFloors = new Map<string, FloorLayout>()
/** So many layouts are kept. */
const mostLaid = 500

function layoutOf(
  { job: { rules } }: Task<FloorInputs>,
  floor: { area: readonly Region[]; way: Direction; board: Of<"board">; hand: readonly Offcut[] },
): FloorLayout {
  const { start, end } = floor.way.wall
  const { width, length, mix } = floor.board
  const task: RowTask = {
    floor: floor.area,
    from: { start, end },
    board: { width, length, ...(mix ? { mix } : {}) },
    hand: floor.hand,
    limits: {
      kerf: rules.value("floor-saw-kerf"),
      leastEnd: rules.value("floor-end-least"),
      stagger: rules.value("floor-stagger-least"),
      leastRow: rules.value("floor-row-least"),
    },
  }
  const key = JSON.stringify(task)
  const layout = laidFloors.get(key) ?? layRows(task)
  if (laidFloors.size >= mostLaid) laidFloors.clear()
  laidFloors.set(key, layout)
  return layout
}

function judged(task: Task<FloorInputs>, plan: FloorPlan): Finding[] {
  return [
    ...judgedGap(task, plan),
    ...judgedRuns(task, plan),
    ...judgedBreaks(task, plan),
    ...judgedRows(task, plan),
    ...judgedSite(task, plan),
  ]
}

function judgedGap(task: Task<FloorInputs>, { movement: moves }: FloorPlan): Finding[] {
  const findings: Finding[] = []
  const asked = Math.max(moves.byRule, moves.byCalculation)
  if (moves.gap < asked) findings.push(messages.gapTooSmall(keyed(task, "gap"), moves.gap, asked))
  const skirting = task.facts.skirting?.thickness
  const cover = Math.ceil(moves.widest + task.job.rules.value("floor-skirting-cover"))
  if (skirting !== undefined && skirting < cover) {
    findings.push(messages.gapNotCovered(task.at, skirting, cover))
  }
  return findings
}

function judgedRuns(task: Task<FloorInputs>, plan: FloorPlan): Finding[] {
  const { rules } = task.job
  const runs = plan.area.laid.flatMap((region) => {
    const box = boundsOf(toFrame(plan.layout.frame, region.outline))
    return [
      { way: "along" as const, is: box.right - box.left, most: rules.value("floor-run-most-along") },
      { way: "across" as const, is: box.top - box.bottom, most: rules.value("floor-run-most-across") },
    ].filter((run) => run.is > run.most)
  })
  const longest = new Map<string, (typeof runs)[number]>()
  for (const run of runs) if (run.is > (longest.get(run.way)?.is ?? 0)) longest.set(run.way, run)
  return [...longest.values()].map((run) => {
    const wall =
      run.way === "along" ? alongWall(task.room, plan.direction) : acrossWall(task.room, plan.direction)
    const cure = wall && plan.breaks.length === 0 ? breaksToWrite(wall, plan.area.whole, run.most) : []
    return messages.runTooLong(keyed(task, "breaks"), run, cure)
  })
}

function judgedBreaks(
  task: Task<FloorInputs>,
  { breaks, profile, movement: moves, area }: FloorPlan,
): Finding[] {
  if (breaks.length === 0) return []
  const at = keyed(task, "breaks")
  const idle = breaks.filter((each) => partedBy([each], area.whole, 0).length <= area.whole.length)
  const findings = idle.map((each) => messages.breakPartsNothing(keyed(task, "breaks", each.number - 1)))
  if (!profile) return [...findings, messages.noBreakProfile(at)]
  const asked = Math.ceil(2 * (moves.widest + task.job.rules.value("floor-break-bearing")))
  return profile.width < asked ? [...findings, messages.breakNotCovered(at, profile.width, asked)] : findings
}

function judgedRows(task: Task<FloorInputs>, { layout }: FloorPlan): Finding[] {
  const { rules } = task.job
  const findings: Finding[] = []
  const leastRow = rules.value("floor-row-least")
  const ends = [layout.rows.at(0), layout.rows.at(-1)].flatMap((row) => row?.runs ?? [])
  const thinnest = Math.min(...ends.flatMap((run) => [run.widths.left, run.widths.right]))
  if (thinnest < leastRow) findings.push(messages.rowTooThin(task.at, thinnest, leastRow))
  const stagger = rules.value("floor-stagger-least")
  if (layout.breach > rounding) findings.push(messages.jointsTooClose(task.at, layout.stagger, stagger))
  return findings
}

/** Lengths are right to this, mm. */
const rounding: Mm = 0.01

function judgedSite(task: Task<FloorInputs>, plan: FloorPlan): Finding[] {
  const { job, room } = task
  const findings: Finding[] = []
  if (plan.underlay.foil && room.storey.base === "ventilated-timber") {
    findings.push(messages.foilOverVentilated(keyed(task, "underlay")))
  }
  if (plan.board.packMass > job.carry.heaviest) {
    const what = `A pack of boards weighs ${plan.board.packMass} kg`
    findings.push(messages.tooMuchToCarry(keyed(task, "board"), what, `${job.carry.heaviest} kg`))
  }
  if (plan.board.length > job.carry.longest) {
    const what = `A board is ${plan.board.length} mm long`
    findings.push(messages.tooMuchToCarry(keyed(task, "board"), what, `${job.carry.longest} mm`))
  }
  if (plan.deck && !plan.deck.measured) findings.push(messages.deckNotMeasured(keyed(task, "deck")))
  return findings
}

function wrongHoles(task: Task<FloorInputs>): Finding[] {
  const known = task.room.holes.map((hole) => hole.id)
  return task.input.into.flatMap((id, index) =>
    known.includes(id) ? [] : [messages.noSuchHole(keyed(task, "into", index), id, known)],
  )
}

function wrongHeld(task: Task<FloorInputs>): Finding[] {
  const { heldAlong } = task.input
  const walls = task.room.walls.length
  const unknown = heldAlong.flatMap((wall, index) =>
    wall > walls ? [messages.noSuchWall(keyed(task, "heldAlong", index), wall, walls)] : [],
  )
  const held = task.room.walls.filter((wall) => heldAlong.includes(wall.number))
  const together = heldTogether(held, fieldsOf(task))
  return together.length > 0
    ? [
        ...unknown,
        messages.heldTwice(
          keyed(task, "heldAlong"),
          together.map((wall) => wall.number),
        ),
      ]
    : unknown
}

function wrongBreaks(task: Task<FloorInputs>): Finding[] {
  return task.input.breaks.flatMap(({ wall: number, fromLeft }, index) => {
    const wall = task.room.walls.find((candidate) => candidate.number === number)
    if (!wall)
      return [messages.noSuchWall(keyed(task, "breaks", index, "wall"), number, task.room.walls.length)]
    return fromLeft < wall.length
      ? []
      : [messages.breakOffWall(keyed(task, "breaks", index, "fromLeft"), fromLeft, wall)]
  })
}

function keyed(task: Task<unknown>, ...path: (string | number)[]) {
  return { file: task.at.file, path: [...task.at.path, ...path] }
}

/** Every length of a board and how many a pack holds of it. */
export function packedLengths(board: Of<"board">): readonly PackedLength[] {
  return board.mix ?? [{ length: board.length, perPack: board.perPack }]
}

/** Boards of each length opened so far, this room's among them. */
function takenWith(layout: FloorLayout, board: Of<"board">, before: readonly number[]): number[] {
  return packedLengths(board).map(
    ({ length }, index) =>
      (before[index] ?? 0) + layout.lengths.filter((own) => Math.abs(own - length) < rounding).length,
  )
}

/** Area to the walls and area covered, m2. */
export function floorAreas(plan: FloorPlan): { whole: number; laid: number } {
  return { whole: areaOfAll(plan.area.whole), laid: areaOfAll(plan.area.laid) }
}
