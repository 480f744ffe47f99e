import type { z } from "zod"
import type { JobFile } from "../intake/schema/job.ts"
import type { Product, ProductKind } from "../intake/schema/products.ts"
import type { At, Finding } from "../kernels/finding.ts"
import type { SheetModel } from "../kernels/paper.ts"
import type { ElapsedHours, Kilograms, Mm, WorkingHours } from "../kernels/units.ts"
import type { RuleEntry } from "../rulebook/entry.ts"
import type { Rules } from "../rulebook/rules.ts"
import type { House, Room } from "../survey/room.ts"
import type { Stage } from "./stages.ts"

/** How one end of a piece is cut. Angles are off square, degrees: 0 square, 45 for a right-angled mitre. */
export interface EndCut {
  as: "square" | "scribed" | "internal-mitre" | "external-mitre" | "against-architrave" | "return" | "scarf"
  /** Saw setting off square, degrees. */
  setting: number
}

/** A piece to be cut from a stock length. */
export interface Piece {
  /** Mark for the back of the piece: room, wall, piece, e.g. `A1-3-S1`. */
  mark: string
  trade: string
  room: string
  wall?: number
  /** Product id of the stock. */
  product: string
  what: string
  /** Long-point length to be cut, mm. */
  length: Mm
  /** Short-point length, mm, where an end is cut at an angle. */
  shortPoint?: Mm
  left: EndCut
  right: EndCut
  /** True if the run may be made of several lengths with a joint. */
  mayBeJointed: boolean
}

/** How much of a product a room takes. */
export interface Quantity {
  trade: string
  room: string | null
  /** What it is for, in trade words. */
  what: string
  /** Product id; null for what is counted but not bought. */
  product: string | null
  /** Net need, and the need with waste and spares, in `unit`. */
  net: number
  gross: number
  unit: "m2" | "m" | "l" | "nr" | "kg"
  /** Where the figures come from, in words: `15.43 m2 less ...`. */
  from: string
}

/** Elapsed time after a step before something may follow; what it forbids meanwhile. */
export interface Gate {
  /** What must dry, cure or settle. */
  process: string
  hours: ElapsedHours
  /** What ends it besides the hours: a reading, a touch. */
  until?: string
  forbids: ("walk" | "load" | "coat" | "close" | "wet")[]
}

/** One step of work in a room (or in the house, where room is null). */
export interface Step {
  /** Unique in the job: `<trade>/<room or door>/<step>`. */
  key: string
  trade: string
  room: string | null
  title: string
  /** What to do and to what, for the one who does it. */
  detail: string
  stage: Stage
  /** Person-hours of work. */
  hours: WorkingHours
  /** Keys of steps that must be done first, besides what the stages already ask. */
  after: string[]
  gate?: Gate
  /** What must be checked and signed before going on. */
  hold?: string
  /** True if it makes noise or dust that people in the house must be spared in quiet hours. */
  noisy: boolean
  dusty: boolean
  /** True for solvent and oil coats: not on a storey where people sleep, so many hours before bedtime. */
  fumes?: boolean
}

/** A caution for those who do the work; it advises and defers, it never certifies. */
export interface Caution {
  trade: string
  /** Same id, same caution: repeated cautions are printed once a sheet. */
  id: string
  text: string
  why: string
  /** To whom it defers: building control, the maker's instructions, a licensed trade. */
  defer: string
}

/** What a trade's calculation gives for one room or for the house. */
export interface Work {
  pieces: Piece[]
  quantities: Quantity[]
  steps: Step[]
  cautions: Caution[]
  findings: Finding[]
  /** Ids of the rulebook entries used. */
  rests: string[]
  /** Machine-readable results for job.json: plain data with stable keys, figures rounded. */
  results: Record<string, unknown>
}

/** What is left of a floor board, mm: along it from its left end, across it from its groove. */
export interface BoardOffcut {
  board: number
  /** The room that opened the board. */
  room: string | null
  /** Length of the whole board. */
  of: Mm
  from: Mm
  to: Mm
  low: Mm
  high: Mm
  mark: string
}

/** What other trades need to know of a room, offered by the trade that decides it and passed on by the composer. */
export interface RoomFacts {
  /** Thickness of the new floor over the deck, underlay included, mm; what lies there now where no floor is laid. */
  floorBuildUp?: Mm
  /** Expansion gap at the walls that the skirting must cover, mm. */
  floorGap?: Mm
  /**
   * Floor boards once this room is laid: boards of each length opened so far, offcuts in hand for the next room, and marks of those it
   * was brought.
   */
  floorBoards?: {
    product: string
    taken: readonly number[]
    left: readonly BoardOffcut[]
    brought: readonly string[]
  }
  /** What one walks on: `oak`, `tile`, `carpet`, `old`. */
  floorFinish?: string
  skirting?: { thickness: Mm; height: Mm }
  architrave?: { thickness: Mm; width: Mm; margin: Mm }
  /** Inside of each lining that hangs a door of this room, by door id: width between legs, height from the finished floor, mm. */
  linings?: Record<string, { width: Mm; height: Mm }>
  /** Tiled wall area not to be painted, m2. */
  tiledWall?: number
  /** Baths and showers where they stand on the plan, mm from their wall's left end and out from it: electrical zones go by them. */
  wetPlaces?: { what: "bath" | "shower"; wall: number; fromLeft: Mm; width: Mm; depth: Mm }[]
}
/** Facts of every room, by room id. */
export type Passed = ReadonlyMap<string, RoomFacts>

/** What every trade may read of the job. */
export interface JobFacts {
  ref: string
  carry: { longest: Mm; heaviest: Kilograms }
  climate: JobFile["climate"]
  house: House
  rules: Rules
  /** Product of this id and kind; undefined (with a finding already made by intake) where there is none. */
  product<K extends ProductKind>(id: string | undefined, kind: K): Extract<Product, { kind: K }> | undefined
  /** Product id chosen in products.yaml for a use, or undefined. */
  chosen(use: string): string | undefined
  passed: Passed
}

/** One room's task for a trade. */
export interface Task<I> {
  job: JobFacts
  room: Room
  /** What the author wrote for this trade in the room, validated and with defaults; null where nothing was written. */
  input: I
  /** Where it was written. */
  at: At
  /** What this room passes on, by all trades. */
  facts: RoomFacts
}

/** A trade: what may be written for it, its constants, its calculation and its sheets. */
export interface Trade<I = unknown> {
  /** Key under `work:` in a room file: `floors`, `doors` ... */
  id: string
  title: string
  /** Letter for piece marks. */
  letter: string
  /** What the author may write under `work.<id>` of a room. */
  inputs: z.ZodType<I>
  /** What the author may write under `work` of a doorway; only the trade that hangs doors has one. */
  doorInputs?: z.ZodType
  /** Product uses this trade reads from products.yaml. */
  uses: { use: string; kind: ProductKind; what: string }[]
  rules: RuleEntry[]
  /** What the room passes on to other trades; called for every room before any `work`. */
  facts?(task: Task<I>): RoomFacts
  /** The work in one room; called where the room has `work.<id>`. */
  work(task: Task<I>): Work
  /** Sheets of this trade for one room's pack. */
  sheets(task: Task<I>, work: Work): SheetModel[]
  /** Work and sheets across the whole job, from the rooms' works of this trade, in room order. */
  across?(job: JobFacts, rooms: { room: Room; work: Work }[]): Promise<{ work: Work; sheets: SheetModel[] }>
}

/** A work with nothing in it, to begin from. */
export function noWork(): Work {
  return { pieces: [], quantities: [], steps: [], cautions: [], findings: [], rests: [], results: {} }
}
