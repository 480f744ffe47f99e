import type { CuttingModel } from "../cutting-model.ts"
import type { Column } from "./master.ts"

/** A cut: bars, each weighed by half its pieces of a set of widths, rounded up, come to at least half that set's demand, rounded up. */
export interface HalfCut {
  /** The set, by type, rising. */
  set: number[]
  least: number
}

/** Weight of a bar in a cut: half its pieces of the set, rounded up. */
export function halfWeight(set: readonly number[], counts: readonly number[]): number {
  let pieces = 0
  for (const type of set) pieces += counts[type] as number
  return Math.ceil(pieces / 2)
}

/** The slides of the cover program that bring a place into the set from outside: each counts as one in the cut. */
export function slidesInto(set: readonly number[]): number[] {
  return set.flatMap((type, at) => (type > 0 && set[at - 1] !== type - 1 ? [type - 1] : []))
}

/**
 * Cuts that a solution of the cover program breaks. Each of its rows is at least its demand, so half the sum of any set of rows is too,
 * and stays so when all numbers are rounded up, since bars and slides come whole. That gains where the demand is odd and the bars in
 * use hold even numbers of the set: such sets are found by elimination modulo 2, the bars used most first.
 * Rounding after V. Chvatal, Edmonds polytopes and a hierarchy of combinatorial problems, 1973; the halves after A. Caprara,
 * M. Fischetti, {0, 1/2}-Chvatal-Gomory cuts, 1996 (both from memory).
 * @param uses of the columns, then of the slides, as in the cover program
 * @param most cuts at most
 * @param random chooses among rows that do as well
 */
export function brokenHalfCuts(
  model: CuttingModel,
  columns: readonly Column[],
  uses: ArrayLike<number>,
  most: number,
  random: () => number,
): HalfCut[] {
  const used = usedEntries(model, columns, uses)
  const found = new Map<string, { cut: HalfCut; lack: number }>()
  for (let pass = 0; pass < PASSES; pass++) eliminate(model, used, found, random)
  const ranked = [...found.values()].sort((a, b) => b.lack - a.lack)
  return ranked.slice(0, most).map(({ cut }) => cut)
}

/** Times that the elimination is done, with other choices each time. */
const PASSES = 3
/** A use below this is none. */
const LEAST_USE = 1e-6
/** A cut must be broken by as much as this, of 1/2 at most. */
const LEAST_LACK = 0.02

/** What is in use, most used first: which types are odd in it, and how often it is used; and the slack of each row. */
interface Used {
  entries: { types: number[]; use: number }[]
  slack: number[]
}

function usedEntries(model: CuttingModel, columns: readonly Column[], uses: ArrayLike<number>): Used {
  const slack = model.demand.map((count) => -count)
  const entries: Used["entries"] = []
  columns.forEach(({ counts }, column) => {
    const use = uses[column] as number
    if (use <= LEAST_USE) return
    const types: number[] = []
    counts.forEach((count, type) => {
      if (count === 0) return
      slack[type] = (slack[type] as number) + count * use
      if (count % 2 === 1) types.push(type)
    })
    entries.push({ types, use })
  })
  for (let type = 0; type + 1 < model.widths.length; type++) {
    const use = uses[columns.length + type] as number
    if (use <= LEAST_USE) continue
    slack[type] = (slack[type] as number) - use
    slack[type + 1] = (slack[type + 1] as number) + use
    entries.push({ types: [type, type + 1], use })
  }
  return { entries: entries.sort((a, b) => b.use - a.use), slack: slack.map((value) => Math.max(0, value)) }
}

/** A sum of rows modulo 2. */
interface OddSum {
  /** 1 for each type of the set. */
  set: Uint8Array
  /** 1 for each entry that is odd in the set. */
  odd: Uint8Array
  demandOdd: boolean
  slack: number
}

function eliminate(
  model: CuttingModel,
  { entries, slack }: Used,
  found: Map<string, { cut: HalfCut; lack: number }>,
  random: () => number,
): void {
  const rows: OddSum[] = model.demand.map((count, type) => ({
    set: new Uint8Array(model.widths.length),
    odd: new Uint8Array(entries.length),
    demandOdd: count % 2 === 1,
    slack: slack[type] as number,
  }))
  rows.forEach((row, type) => {
    row.set[type] = 1
  })
  entries.forEach(({ types }, entry) => {
    for (const type of types) (rows[type] as OddSum).odd[entry] = 1
  })
  let open = rows.filter((row) => row.slack < 1)
  const look = (row: OddSum) => {
    if (!row.demandOdd) return
    let weight = row.slack
    for (let entry = 0; entry < entries.length && weight < 1; entry++)
      if (row.odd[entry] === 1) weight += entries[entry]?.use ?? 0
    const lack = (1 - weight) / 2
    if (lack < LEAST_LACK) return
    const set: number[] = []
    row.set.forEach((within, type) => {
      if (within === 1) set.push(type)
    })
    const demand = set.reduce((sum, type) => sum + (model.demand[type] as number), 0)
    found.set(set.join(), { cut: { set, least: Math.ceil(demand / 2) }, lack })
  }
  for (const row of open) look(row)
  for (let entry = 0; entry < entries.length; entry++) {
    let pivot: OddSum | undefined
    let rank = Number.POSITIVE_INFINITY
    const holding = open.filter((row) => row.odd[entry] === 1)
    for (const row of holding) {
      const here = row.slack + random() * LIKE
      if (here >= rank) continue
      pivot = row
      rank = here
    }
    if (pivot === undefined) continue
    const out = pivot
    for (const row of holding) {
      if (row === out) continue
      addTo(row, out)
      look(row)
    }
    open = open.filter((row) => row !== out && row.slack < 1)
  }
}

/** Slacks that differ by less than this are alike. */
const LIKE = 0.1

function addTo(row: OddSum, other: OddSum): void {
  for (let at = 0; at < row.set.length; at++)
    row.set[at] = (row.set[at] as number) ^ (other.set[at] as number)
  for (let at = 0; at < row.odd.length; at++)
    row.odd[at] = (row.odd[at] as number) ^ (other.odd[at] as number)
  row.demandOdd = row.demandOdd !== other.demandOdd
  row.slack += other.slack
}
