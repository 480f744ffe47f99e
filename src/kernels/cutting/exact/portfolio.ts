import type { CuttingModel, Pattern } from "../cutting-model.ts"
import { patternCost } from "../cutting-model.ts"
import { firstFitPatterns } from "../first-fit.ts"
import type { PossibleTotals } from "./bounds.ts"
import { martelloToth, possibleTotals } from "./bounds.ts"
import type { ProvedPrices } from "./column-generation.ts"
import { generateColumns, wholeBound } from "./column-generation.ts"
import { divedPlan } from "./diving.ts"
import type { Effort } from "./effort.ts"
import { Master } from "./master.ts"
import { branchedPlan } from "./pattern-branching.ts"
import { worthwhilePatterns } from "./pattern-enumeration.ts"
import { patternProgram } from "./pattern-program.ts"
import { Pricing } from "./pricing.ts"
import { seeded } from "./seeded.ts"
import type { Remaining } from "./sequential-values.ts"
import { sequentialPlan } from "./sequential-values.ts"

/** A plan in patterns, and what is proved of its cost (model units). */
export interface Solved {
  patterns: Pattern[]
  cost: number
  bound: number
  /** Prices behind the bound; undefined if the linear program was not needed. */
  proved: ProvedPrices | undefined
}

/**
 * The cheapest plan and the best bound that the effort allows. Several ways in turn, each stopping as soon as cost and bound meet:
 * bar-by-bar filling; bounds by material and by Martello and Toth; the linear program by columns; every pattern that a cheaper plan
 * could need, listed, tightened by cuts and given to branch and bound; diving between such searches.
 * @param first a plan to begin from
 */
export async function solvePortfolio(model: CuttingModel, first: Pattern[], effort: Effort): Promise<Solved> {
  const search = new Search(model, first, effort)
  await search.run()
  return { patterns: search.plan, cost: search.cost, bound: search.bound, proved: search.proved }
}

/** Rounds of bar-by-bar filling before and after the linear program. */
const FIRST_ROUNDS = 5
const PRICED_ROUNDS = 12
/** Rounds in which a dive finishes its rest. */
const DIVE_ROUNDS = 2
/** A dive solves its last so many pieces as a problem of their own, for so long. */
const LITTLE = 40
const LITTLE_MS = 400
/** Dives at most, one after another. */
const DIVES = 4
/** Patterns that branch and bound is given at most. */
const PATTERNS_AT_MOST = 60_000

class Search {
  readonly #model: CuttingModel
  readonly #effort: Effort
  readonly #pricing: Pricing
  readonly #random = seeded(1)
  readonly #totals: PossibleTotals
  plan: Pattern[]
  cost: number
  bound = 0
  proved: ProvedPrices | undefined
  /** Patterns up to this total were more than so many. */
  #tooMany: { atMost: number; most: number } | undefined

  constructor(model: CuttingModel, first: Pattern[], effort: Effort) {
    this.#model = model
    this.#effort = effort
    this.#pricing = new Pricing(model, effort)
    this.plan = first
    this.cost = patternCost(model, first)
    this.#totals = possibleTotals(model, this.cost)
    this.#raise(0)
    const [only, other] = model.stocks
    if (only !== undefined && other === undefined)
      this.#raise(only.cost * martelloToth(model.widths, model.demand, only.capacity))
  }

  async run(): Promise<void> {
    if (this.#met) return
    this.#fill(this.#whole, this.#model.widths, FIRST_ROUNDS)
    if (this.#met) return
    const master = await Master.open(this.#model)
    try {
      this.#begin(master)
      const prices = this.#generate(master)
      if (this.#met) return
      this.#fill(this.#whole, prices, PRICED_ROUNDS)
      await this.#branchOnColumns(master)
      await this.#list(FEW_PATTERNS, FEW_NODES)
      await this.#tighten()
      await this.#deepen(SOME_PATTERNS, FEW_NODES)
      for (let dive = 0; dive < DIVES && !this.#met && !this.#effort.exhausted; dive++) {
        await this.#dive(master, dive)
        await this.#deepen(SOME_PATTERNS << dive, FEW_NODES << dive)
      }
      if (this.#met || this.#effort.exhausted) return
      await this.#restricted(master)
      await this.#deepen(PATTERNS_AT_MOST, Number.POSITIVE_INFINITY)
    } finally {
      master.close()
    }
  }

  get #met(): boolean {
    return this.cost <= this.bound
  }

  get #whole(): Remaining {
    return { demand: this.#model.demand, limits: this.#model.stocks.map((stock) => stock.limit) }
  }

  #raise(bound: number): void {
    this.bound = Math.max(this.bound, Math.min(this.cost, this.#totals.next(wholeBound(bound))))
  }

  #offer(plan: Pattern[] | undefined): void {
    if (plan === undefined) return
    const cost = patternCost(this.#model, plan)
    if (cost >= this.cost) return
    this.cost = cost
    this.plan = plan
  }

  #fill(left: Remaining, worth: ArrayLike<number>, rounds: number): void {
    const asked = { worth, rounds, target: this.bound, random: this.#random }
    this.#offer(sequentialPlan(this.#model, this.#pricing, left, asked, this.#effort))
  }

  #begin(master: Master): void {
    for (const { stock, counts } of this.plan) master.add({ stock, counts })
    const endless = this.#model.stocks.flatMap((stock, index) =>
      stock.limit === Number.POSITIVE_INFINITY ? [index] : [],
    )
    const costOf = (index: number) => this.#model.stocks[index]?.cost ?? 0
    this.#model.widths.forEach((width, type) => {
      const fitting = endless.filter((index) => (this.#model.stocks[index]?.capacity ?? 0) >= width)
      const stock = fitting.reduce((a, b) => (costOf(b) < costOf(a) ? b : a))
      const fit = Math.floor((this.#model.stocks[stock]?.capacity ?? 0) / width)
      for (const count of new Set([1, Math.min(fit, this.#model.demand[type] as number)])) {
        master.add({ stock, counts: this.#model.widths.map((_, at) => (at === type ? count : 0)) })
      }
    })
  }

  #generate(master: Master): Float64Array {
    const asked = { ...this.#whole, enough: this.cost - 1, rounds: Number.POSITIVE_INFINITY, led: true }
    const { solution, proved } = generateColumns(master, this.#model, this.#pricing, asked, this.#effort)
    this.proved = proved
    this.#raise(proved.bound)
    return solution.prices
  }

  async #dive(master: Master, turn: number): Promise<void> {
    const finish = (left: Remaining, prices: Float64Array) => {
      const asked = { worth: prices, rounds: DIVE_ROUNDS, target: 0, random: this.#random }
      return sequentialPlan(this.#model, this.#pricing, left, asked, this.#effort)
    }
    const random = turn === 0 ? () => 0 : this.#random
    const pieces = this.#model.demand.reduce((sum, count) => sum + count, 0)
    const little = pieces > 2 * LITTLE ? LITTLE : 0
    const settle = (left: Remaining) => this.#settle(left)
    const dive = { finish, settle, little, target: this.bound, random }
    this.#offer(await divedPlan(master, this.#model, this.#pricing, dive, this.#effort))
  }

  /** The best plan for a few pieces, as a problem of its own. */
  async #settle({ demand, limits }: Remaining): Promise<Pattern[]> {
    const model = this.#model
    const types = demand.flatMap((count, type) => (count > 0 ? [type] : []))
    const rest: CuttingModel = {
      ...model,
      widths: types.map((type) => model.widths[type] as number),
      demand: types.map((type) => demand[type] as number),
      stocks: model.stocks.map((stock, index) => ({ ...stock, limit: limits[index] as number })),
    }
    const part = this.#effort.part(LITTLE_MS)
    const { patterns } = await solvePortfolio(rest, firstFitPatterns(rest), part)
    this.#effort.settle(part)
    return patterns.map(({ stock, counts, times }) => {
      const whole = model.widths.map(() => 0)
      counts.forEach((count, at) => {
        whole[types[at] as number] = count
      })
      return { stock, counts: whole, times }
    })
  }

  /** A good plan of the columns so far, by plunging. */
  async #branchOnColumns(master: Master): Promise<void> {
    if (this.#met) return
    const asked = {
      atMost: this.#totals.before(this.cost),
      target: this.bound,
      totals: this.#totals,
      nodes: COLUMN_NODES,
    }
    this.#offer((await branchedPlan(this.#model, [...master.columns], asked, this.#effort)).plan)
  }

  /** The best plan of the columns so far. */
  async #restricted(master: Master): Promise<void> {
    const asked = { atMost: this.#totals.before(this.cost), target: this.bound, nodes: RESTRICTED_NODES }
    this.#offer((await patternProgram(this.#model, master.columns, asked, this.#effort)).plan)
  }

  /** All patterns that a cheaper plan could need, if they are few: one search settles the rest. */
  async #list(most: number, nodes: number): Promise<void> {
    if (!this.#met) await this.#searchUpTo(this.#totals.before(this.cost), most, nodes)
  }

  /** Raises the bound by cuts alone, over as many of the best patterns as may be listed. */
  async #tighten(): Promise<void> {
    if (this.#met) return
    for (let step = FARTHEST; step >= 1; step = Math.floor(step / 2)) {
      const atMost = Math.min(this.#totals.before(this.cost), this.#totals.next(this.bound + step))
      if ((await this.#searchUpTo(atMost, SOME_PATTERNS, 1)) !== undefined) return
    }
  }

  /**
   * Asks for a plan at the least total still possible, then at greater ones as long as that succeeds, until cost and bound meet or even
   * the least cannot be settled.
   */
  async #deepen(most: number, nodes: number): Promise<void> {
    for (let step = 1; !this.#met && !this.#effort.exhausted; ) {
      const dearest = this.#totals.before(this.cost)
      const atMost = Math.min(dearest, this.#totals.next(this.bound + step - 1))
      const farther = step > 1
      const complete = await this.#searchUpTo(
        atMost,
        most,
        farther ? Math.ceil(nodes * SHARE_FARTHER) : nodes,
      )
      if (complete === true) step *= 2
      else if (farther) step = 1
      else return
    }
  }

  /**
   * Lists every pattern that a plan of at most this total could need and searches them; false if the search was cut short, undefined if
   * the patterns were too many.
   */
  async #searchUpTo(atMost: number, most: number, nodes: number): Promise<boolean | undefined> {
    const proved = this.proved
    if (proved === undefined) return undefined
    if (this.#tooMany !== undefined && atMost >= this.#tooMany.atMost && most <= this.#tooMany.most)
      return undefined
    const columns = worthwhilePatterns(this.#model, proved, atMost - proved.bound, most, this.#effort)
    if (columns === undefined) {
      this.#tooMany = { atMost, most }
      return undefined
    }
    const asked = { atMost, target: this.bound, totals: this.#totals, nodes }
    const { plan, complete, bound } = await branchedPlan(this.#model, columns, asked, this.#effort)
    this.#offer(plan)
    this.#raise(Math.min(atMost + 1, complete ? Number.POSITIVE_INFINITY : bound))
    return complete
  }
}

/** How far above the bound patterns are listed for cuts at first. */
const FARTHEST = 4
/** Patterns so few that listing them comes before more diving. */
const FEW_PATTERNS = 600
/** Patterns that are worth a short search at any time. */
const SOME_PATTERNS = 6_000
/** Share of the nodes that a search is given which asks for more than the least total still possible. */
const SHARE_FARTHER = 0.3
/** Nodes of the search over the columns of the linear program. */
const COLUMN_NODES = 80
/** Nodes of the first search over so few. */
const FEW_NODES = 1_500
/** Branch-and-bound nodes spent on the columns of the linear program alone. */
const RESTRICTED_NODES = 200
