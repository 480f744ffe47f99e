import { cutPlan, firstFitDecreasing } from "../../kernels/cutting/cut-plan.ts"
import { cuttingModel } from "../../kernels/cutting/cutting-model.ts"
import { arcFlow } from "../../kernels/cutting/exact/arc-flow.ts"
import { seeded } from "../../kernels/cutting/exact/seeded.ts"
import type { CuttingProblem } from "../../kernels/cutting/problem.ts"
import { verifyCutPlan } from "../../kernels/cutting/verify-cut-plan.ts"

/** How much to measure, and where to print. */
export interface JoineryBench {
  rooms: number
  /** Cases of the size of a room's or a storey's trade: against the plain arc-flow model, and against first-fit decreasing. */
  againstArcFlow: number
  againstFirstFit: number
  /** Time given to the plain model on each case. */
  limitSeconds: number
  print(line: string): void
}

/** What the measurements came to. */
export interface JoineryRatios {
  job: { profiles: number; pieces: number; lengths: number; proven: number; ms: number }
  /** Our time over the plain model's, case by case, and how many of its cases the plain model proved. */
  arcFlow: { cases: number; medianRatio: number; proven: number; provenByArcFlow: number }
  /** First-fit's lengths and cost over the plan's, all cases together. */
  firstFit: { cases: number; lengthsSaved: number; lengths: number; costSaved: number }
}

/**
 * The saw's measurements in one run, on invented joinery from a fixed seed: the whole joinery of a job of many rooms; our time against
 * the plain arc-flow model given whole to the integer programming library; lengths saved against first-fit decreasing. Every plan is
 * verified.
 * @throws Fault on a wrong plan
 */
export async function benchJoinery(asked: JoineryBench): Promise<JoineryRatios> {
  await planned(tradeCase(seeded(0)))
  const job = await wholeJob(asked)
  const arcFlow = await ratioToArcFlow(asked)
  const firstFit = await savedOverFirstFit(asked)
  return { job, arcFlow, firstFit }
}

/** Stock lengths and prices in pence of four invented profiles; thickness does not matter to the saw. */
const profiles = {
  skirting: { 3000: 1150, 3600: 1370, 4200: 1590, 5400: 2080 },
  architrave: { 2200: 520, 4400: 990, 5400: 1260 },
  lining: { 2100: 1320, 3000: 1890, 4200: 2610 },
  stop: { 2400: 310, 4200: 560 },
} as const
type Profile = keyof typeof profiles

const kerf = 3
const endTrim = 5

function problemOf(profile: Profile, lengths: readonly number[]): CuttingProblem {
  return {
    kerf,
    endTrim,
    stocks: Object.entries(profiles[profile]).map(([length, cost]) => ({
      id: length,
      length: Number(length),
      cost,
    })),
    items: lengths.map((length, index) => ({ id: `${profile}-${index + 1}`, length, count: 1 })),
  }
}

/** The pieces of one invented room: skirting by wall, one or two doorways with architraves both sides, lining and stop. */
function roomPieces(random: () => number): Record<Profile, number[]> {
  const between = (least: number, most: number) => Math.round(least + random() * (most - least))
  const wide = between(1800, 5200)
  const deep = between(1600, 4600)
  const doors = random() < 0.7 ? 1 : 2
  const width = [618, 692, 768][between(0, 2)] as number
  const height = between(1988, 2004)
  const each = <T>(count: number, value: () => T) => Array.from({ length: count }, value)
  return {
    skirting: [wide - 18, deep - 18, deep - 18, between(300, 900), wide - width - between(300, 1000)].filter(
      (length) => length > 0,
    ),
    architrave: each(2 * doors, () => [height + 75, height + 75, width + 150]).flat(),
    lining: each(doors, () => [height + 19, height + 19, width + 64]).flat(),
    stop: each(doors, () => [height - 12, height - 12, width]).flat(),
  }
}

async function planned(problem: CuttingProblem) {
  const start = performance.now()
  const plan = await cutPlan(problem)
  const ms = performance.now() - start
  verifyCutPlan(problem, plan)
  return { plan, ms }
}

async function wholeJob({ rooms, print }: JoineryBench): Promise<JoineryRatios["job"]> {
  const random = seeded(1)
  const all = Array.from({ length: rooms }, () => roomPieces(random))
  let ms = 0
  let lengths = 0
  let pieces = 0
  let proven = 0
  const names = Object.keys(profiles) as Profile[]
  for (const profile of names) {
    const problem = problemOf(
      profile,
      all.flatMap((room) => room[profile]),
    )
    const run = await planned(problem)
    ms += run.ms
    lengths += run.plan.lengths
    pieces += problem.items.length
    proven += run.plan.proven ? 1 : 0
  }
  print(
    `joinery of ${rooms} rooms: ${names.length} profiles, ${pieces} pieces, ${lengths} lengths, ${proven} of ${names.length} proven, ${Math.round(ms)} ms`,
  )
  return { profiles: names.length, pieces, lengths, proven, ms }
}

/** Skirting and architraves of a few rooms: what one order of a small job holds. */
function tradeCase(random: () => number): CuttingProblem {
  const rooms = Array.from({ length: 2 + Math.floor(random() * roomsOfTradeCase) }, () => roomPieces(random))
  const profile: Profile = random() < 1 / 2 ? "skirting" : "architrave"
  return problemOf(
    profile,
    rooms.flatMap((room) => room[profile]),
  )
}

const roomsOfTradeCase = 5

async function ratioToArcFlow({ againstArcFlow, limitSeconds, print }: JoineryBench) {
  const random = seeded(2)
  const ratios: number[] = []
  let proven = 0
  let provenByArcFlow = 0
  for (let index = 0; index < againstArcFlow; index++) {
    const problem = tradeCase(random)
    const { plan, ms } = await planned(problem)
    const { model } = cuttingModel(problem)
    const start = performance.now()
    const plain = await arcFlow(model, limitSeconds)
    ratios.push(ms / (performance.now() - start))
    proven += plan.proven ? 1 : 0
    provenByArcFlow += plain.proven ? 1 : 0
  }
  const medianRatio = ratios.sort((a, b) => a - b)[Math.floor(ratios.length / 2)] ?? 0
  print(
    `against plain arc-flow: ${againstArcFlow} cases, median time ratio ${medianRatio.toFixed(3)}; ${proven} proven here, ${provenByArcFlow} by arc-flow within ${limitSeconds} s`,
  )
  return { cases: againstArcFlow, medianRatio, proven, provenByArcFlow }
}

async function savedOverFirstFit({ againstFirstFit, print }: JoineryBench) {
  const random = seeded(3)
  let lengthsSaved = 0
  let lengths = 0
  let cost = 0
  let firstFitCost = 0
  for (let index = 0; index < againstFirstFit; index++) {
    const problem = tradeCase(random)
    const byHand = firstFitDecreasing(problem)
    const { plan } = await planned(problem)
    const metres = (bars: typeof plan.bars) => bars.reduce((sum, bar) => sum + bar.length, 0)
    lengthsSaved += (metres(byHand.bars) - metres(plan.bars)) / longestLength
    lengths += metres(plan.bars) / longestLength
    cost += plan.cost
    firstFitCost += byHand.cost
  }
  const costSaved = firstFitCost / cost - 1
  print(
    `against first-fit decreasing: ${againstFirstFit} cases, ${lengthsSaved.toFixed(1)} lengths of ${longestLength} mm saved on ${lengths.toFixed(1)}; first-fit costs ${(100 * costSaved).toFixed(2)} % more`,
  )
  return { cases: againstFirstFit, lengthsSaved, lengths, costSaved }
}

/** Metres are told in lengths of this, mm. */
const longestLength = 5400
