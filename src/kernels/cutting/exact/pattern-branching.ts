import type { BasisInput, Highs, Model } from "highs"
import type { CuttingModel, Pattern } from "../cutting-model.ts"
import type { PossibleTotals } from "./bounds.ts"
import type { Effort } from "./effort.ts"
import type { Column } from "./master.ts"
import { solver } from "./master.ts"
import {
  COST_BOUND,
  coverModel,
  INFEASIBLE,
  OPTIMAL,
  STEPS_PER_CELL,
  type Tightened,
  tightenedProgram,
  VALUE_ERROR,
} from "./tightened-program.ts"

/** What the search over given patterns came to. */
export interface BranchingResult {
  /** The best plan found that costs no more than asked, if any. */
  plan: Pattern[] | undefined
  /** True if the search was complete: the plan is the best of these patterns, or there is none. */
  complete: boolean
  /** No plan of these patterns costs less, in fractions; above `atMost` if none costs as little as that. */
  bound: number
}

/** What is asked of the search. */
export interface BranchingAsked {
  /** Dearest plan wanted. */
  atMost: number
  /** A plan no dearer than this ends the search. */
  target: number
  totals: PossibleTotals
  /** Nodes at most. */
  nodes: number
}

/**
 * The best plan made of the patterns given, by branch and bound over their linear program. Branches ask how many bars come from a
 * stock, then on how many bars two widths lie together, then how often one pattern is sawn; the greater number is tried first.
 * At each node, patterns whose reduced cost is over what is left to the dearest plan wanted are shut.
 */
export async function branchedPlan(
  model: CuttingModel,
  columns: readonly Column[],
  asked: BranchingAsked,
  effort: Effort,
): Promise<BranchingResult> {
  if (columns.length === 0) return { plan: undefined, complete: true, bound: Number.POSITIVE_INFINITY }
  const highs = await solver()
  const root = tightenedProgram(highs, model, columns, asked.atMost, effort)
  if (root === undefined) return { plan: undefined, complete: true, bound: Number.POSITIVE_INFINITY }
  const search = new Branching(highs, model, root, asked, effort)
  try {
    search.run()
    return { plan: search.plan, complete: !search.cut, bound: root.bound }
  } finally {
    search.close()
  }
}

/** A use this near a whole number is that number. */
const NEARLY = 1e-6
/** Nodes from one plunge to the next. */
const NODES_PER_PLUNGE = 40
/** A plunge takes a column once more if it is used more than once less this. */
const MOSTLY = 0.3
/** How much sooner the widest pieces are branched on than the narrowest. */
const WIDE_FIRST = 0.2

/** Columns of which the number used, in sum, is to be made whole. */
interface Question {
  members: number[]
  sum: number
}

class Branching {
  readonly #model: CuttingModel
  readonly #columns: readonly Column[]
  readonly #program: Model
  readonly #infinity: number
  readonly #asked: BranchingAsked
  readonly #effort: Effort
  readonly #upper: Float64Array
  readonly #lower: Float64Array
  #atMost: number
  #nodes = 0
  #done = false
  plan: Pattern[] | undefined
  cut = false

  constructor(
    highs: Highs,
    model: CuttingModel,
    { columns, cuts }: Tightened,
    asked: BranchingAsked,
    effort: Effort,
  ) {
    this.#model = model
    this.#columns = columns
    this.#asked = asked
    this.#effort = effort
    this.#atMost = asked.atMost
    this.#infinity = highs.infinity
    this.#upper = new Float64Array(columns.length).fill(highs.infinity)
    this.#lower = new Float64Array(columns.length)
    this.#program = coverModel(highs, model, columns, cuts)
    this.#program.options.set({ objective_bound: this.#atMost + VALUE_ERROR })
  }

  run(): void {
    this.#node()
  }

  close(): void {
    this.#program.dispose()
  }

  #node(): void {
    if (++this.#nodes > this.#asked.nodes || this.#effort.exhausted) {
      this.cut = true
      this.#done = true
      return
    }
    const relaxed = this.#relaxed()
    if (relaxed === undefined) return
    const question = this.#question(relaxed.uses)
    if (question === undefined) {
      this.#keep(relaxed.uses)
      return
    }
    const basis = this.#program.getBasis()
    const shut = this.#shutDear(relaxed.duals, this.#atMost - relaxed.value + VALUE_ERROR)
    if (this.#nodes % NODES_PER_PLUNGE === 1) this.#plunge(relaxed.uses, basis)
    const whole = Math.floor(question.sum + NEARLY)
    if (!this.#done) this.#child(question.members, whole + 1, this.#infinity, basis)
    if (!this.#done) this.#child(question.members, 0, whole, basis)
    for (const [column, upper] of shut) this.#bound(column, this.#lower[column] as number, upper)
  }

  /** The linear program as it stands; undefined if it allows no plan that is wanted. */
  #relaxed(): { value: number; uses: Float64Array; duals: Float64Array } | undefined {
    this.#effort.spend(STEPS_PER_CELL * (this.#columns.length + this.#model.widths.length))
    this.#program.run()
    const status = this.#program.getModelStatus()
    if (status === INFEASIBLE || status === COST_BOUND) return undefined
    if (status !== OPTIMAL) {
      this.cut = true
      return undefined
    }
    const value = this.#program.getObjectiveValue()
    if (value > this.#atMost + VALUE_ERROR) return undefined
    const { colValue, colDual } = this.#program.getSolution()
    return { value, uses: colValue, duals: colDual }
  }

  /** Straight down without coming back: all columns used nearly once more are taken together, until a plan is whole or none is left. */
  #plunge(first: Float64Array, basis: BasisInput): void {
    const taken: [number, number][] = []
    const cut = this.cut
    for (let uses: Float64Array | undefined = first; uses !== undefined; uses = this.#relaxed()?.uses) {
      const whole = Array.from(uses.subarray(0, this.#columns.length), (use) => Math.floor(use + MOSTLY))
      let more = whole.flatMap((count, column) => (count > (this.#lower[column] as number) ? [column] : []))
      if (more.length === 0) {
        const column = this.#mostUsed(uses)
        if (column === undefined) {
          this.#keep(uses)
          break
        }
        more = [column]
        whole[column] = (this.#lower[column] as number) + 1
      }
      for (const column of more) {
        taken.push([column, this.#lower[column] as number])
        this.#bound(column, whole[column] as number, this.#upper[column] as number)
      }
    }
    for (const [column, lower] of taken.reverse()) this.#bound(column, lower, this.#upper[column] as number)
    this.#program.setBasis(basis)
    this.cut = cut
  }

  /** The column whose use is farthest above what is taken of it already; undefined if all uses are whole. */
  #mostUsed(uses: Float64Array): number | undefined {
    let best: number | undefined
    let most = NEARLY
    this.#columns.forEach((_, column) => {
      const over = (uses[column] as number) - (this.#lower[column] as number)
      if (!isBroken(uses[column] as number) || over <= most) return
      best = column
      most = over
    })
    return best
  }

  #child(members: readonly number[], low: number, high: number, basis: BasisInput): void {
    const [only, other] = members
    if (only !== undefined && other === undefined) {
      const [lower, upper] = [this.#lower[only] as number, this.#upper[only] as number]
      this.#bound(only, Math.max(lower, low), Math.min(upper, high))
      this.#node()
      this.#bound(only, lower, upper)
    } else if (high === 0) {
      const open = members.filter((column) => (this.#upper[column] as number) > 0)
      const before = open.map((column) => this.#upper[column] as number)
      for (const column of open) this.#bound(column, 0, 0)
      this.#node()
      open.forEach((column, at) => {
        this.#bound(column, 0, before[at] as number)
      })
    } else {
      const row = this.#program.getDimensions().numRows
      this.#program.addRow(low, high, { indices: [...members], values: members.map(() => 1) })
      this.#node()
      this.#program.deleteRows({ kind: "range", from: row, to: row })
    }
    this.#program.setBasis(basis)
  }

  #bound(column: number, lower: number, upper: number): void {
    this.#lower[column] = lower
    this.#upper[column] = upper
    this.#program.changeColBounds(column, lower, upper)
  }

  /** Shuts unused columns too dear for a plan still wanted; returns them with their bounds. */
  #shutDear(duals: Float64Array, left: number): [number, number][] {
    const shut: [number, number][] = []
    this.#columns.forEach((_, column) => {
      const upper = this.#upper[column] as number
      if (upper === 0 || (this.#lower[column] as number) > 0 || (duals[column] as number) <= left) return
      shut.push([column, upper])
      this.#bound(column, 0, 0)
    })
    return shut
  }

  #keep(uses: Float64Array): void {
    this.plan = this.#columns.flatMap(({ stock, counts }, column) => {
      const times = Math.round(uses[column] as number)
      return times > 0 ? [{ stock, counts, times }] : []
    })
    const cost = this.plan.reduce(
      (sum, { stock, times }) => sum + times * (this.#model.stocks[stock]?.cost ?? 0),
      0,
    )
    this.#atMost = this.#asked.totals.before(cost)
    if (cost <= this.#asked.target || this.#atMost < this.#asked.target) this.#done = true
    else this.#program.options.set({ objective_bound: this.#atMost + VALUE_ERROR })
  }

  /** The sum to make whole next; undefined if all uses are whole. */
  #question(uses: Float64Array): Question | undefined {
    const used = this.#columns.flatMap((_, column) => ((uses[column] as number) > NEARLY ? [column] : []))
    const broken = used.filter((column) => isBroken(uses[column] as number))
    if (broken.length === 0) return undefined
    return (
      this.#stockQuestion(uses, used) ?? this.#pairQuestion(uses, used) ?? this.#columnQuestion(uses, broken)
    )
  }

  #stockQuestion(uses: Float64Array, used: readonly number[]): Question | undefined {
    const sums = this.#model.stocks.map(() => 0)
    for (const column of used) {
      const stock = this.#columns[column]?.stock ?? 0
      sums[stock] = (sums[stock] as number) + (uses[column] as number)
    }
    const stock = mostBroken(sums, () => 1)
    if (stock === undefined || this.#model.stocks.length === 1) return undefined
    return { members: this.#where((column) => column.stock === stock), sum: sums[stock] as number }
  }

  #pairQuestion(uses: Float64Array, used: readonly number[]): Question | undefined {
    const types = this.#model.widths.length
    const sums = new Float64Array(types * types)
    for (const column of used) {
      const present = typesOf(this.#columns[column]?.counts ?? [])
      present.forEach((first, at) => {
        for (const second of present.slice(at)) {
          if (second !== first || (this.#columns[column]?.counts[first] as number) > 1) {
            const pair = first * types + second
            sums[pair] = (sums[pair] as number) + (uses[column] as number)
          }
        }
      })
    }
    const pair = mostBroken(sums, (index) => 1 - (WIDE_FIRST * index) / sums.length)
    if (pair === undefined) return undefined
    const [first, second] = [Math.floor(pair / types), pair % types]
    const least = first === second ? 2 : 1
    const members = this.#where(
      ({ counts }) => (counts[first] as number) >= least && (counts[second] as number) >= 1,
    )
    return { members, sum: sums[pair] as number }
  }

  #columnQuestion(uses: Float64Array, broken: readonly number[]): Question {
    const column = broken.reduce((a, b) => (breach(uses[b] as number) > breach(uses[a] as number) ? b : a))
    return { members: [column], sum: uses[column] as number }
  }

  #where(holds: (column: Column) => boolean): number[] {
    return this.#columns.flatMap((column, index) => (holds(column) ? [index] : []))
  }
}

function typesOf(counts: readonly number[]): number[] {
  return counts.flatMap((count, type) => (count > 0 ? [type] : []))
}

function breach(value: number): number {
  const part = value - Math.floor(value)
  return Math.min(part, 1 - part)
}

function isBroken(value: number): boolean {
  return breach(value) > NEARLY
}

/** Index of the sum farthest from whole, weighed; undefined if all are whole. */
function mostBroken(sums: ArrayLike<number>, weight: (index: number) => number): number | undefined {
  let best: number | undefined
  let most = 0
  for (let index = 0; index < sums.length; index++) {
    const value = sums[index] as number
    if (!isBroken(value)) continue
    const rank = breach(value) * weight(index)
    if (rank <= most) continue
    best = index
    most = rank
  }
  return best
}
