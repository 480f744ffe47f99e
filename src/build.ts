import type { Job } from "./intake/job.ts"
import type { Finding } from "./kernels/finding.ts"
import { cutLists } from "./orders/cut-lists.ts"
import { orderList } from "./orders/order-list.ts"
import { priceOf } from "./orders/price.ts"
import { datedProgramme } from "./programme/dated.ts"
import { rulesInForce } from "./rulebook/rules.ts"
import { allRules } from "./rulebook-of.ts"
import type { JobResult, TradeResult } from "./sheets/job-result.ts"
import type { House, Room } from "./survey/room.ts"
import { surveyHouse } from "./survey/survey-house.ts"
import type { JobFacts, Passed, RoomFacts, Task, Trade } from "./trades/trade.ts"

/**
 * One job worked out, stage by stage:
 *
 *     job as read -> rulebook -> survey -> facts passed between trades -> trades room by room -> trades across the job
 *                 -> cut lists -> programme -> orders -> price
 *
 * Sheets are made from the result (`sheets/`), paper and site from the sheets (`press/`). Same job, same result.
 */
export async function workOut(job: Job, trades: readonly Trade[]): Promise<JobResult> {
  const { rules, findings: overridden } = rulesInForce(allRules(trades), job.job.overrides, {
    file: "job.yaml",
    path: ["overrides"],
  })
  const { house, findings: surveyed } = surveyHouse(job, rules)
  const facts = jobFacts(job, house, { rules, passed: new Map() })
  const passed = passedFacts(trades, house.rooms, (trade, room, known) =>
    taskOf(job, { ...facts, passed: known }, { trade, room }),
  )
  const known = { ...facts, passed }
  const inRooms = roomResults(trades, house.rooms, (trade, room) => taskOf(job, known, { trade, room }))
  const across = await acrossResults(trades, inRooms, known)
  const results = [...inRooms, ...across]
  const works = results.map((each) => each.work)
  const { lists, findings: sawn } = await cutLists(
    works.flatMap((work) => work.pieces),
    known,
    lengthsInHand(job),
  )
  const programme = datedProgramme({
    steps: works.flatMap((work) => work.steps),
    site: house,
    file: job.programme,
    rules,
    zone: job.job.zone,
  })
  const lines = orderList({
    quantities: works.flatMap((work) => work.quantities),
    lists,
    products: job.products,
    programme,
    job: known,
    preparedOn: job.job.prepared.on,
  })
  return {
    job: job.job,
    house,
    rules,
    programmeFile: job.programme,
    moneyFile: job.money,
    trades: trades.map(({ id, title }) => ({ id, title })),
    results,
    passed,
    programme,
    orders: { lines, cutLists: lists, findings: sawn },
    price: job.money ? priceOf(lines, programme, job.money) : null,
    findings: [
      ...overridden,
      ...surveyed,
      ...works.flatMap((work) => work.findings),
      ...sawn,
      ...programme.findings,
    ],
  }
}

function jobFacts(job: Job, house: House, known: Pick<JobFacts, "rules" | "passed">): JobFacts {
  return {
    ref: job.ref,
    carry: job.job.carry,
    climate: job.job.climate,
    house,
    product: (id, kind) => {
      const found = id === undefined ? undefined : job.products.get(id)
      return found?.kind === kind ? (found as never) : undefined
    },
    chosen: (use) => job.chosen.get(use),
    ...known,
  }
}

/** A trade's task in a room, or null where the room has no work for it. */
function taskOf(
  job: Job,
  facts: JobFacts,
  { trade, room }: { trade: Trade; room: Room },
): Task<unknown> | null {
  const input = job.works.get(room.id)?.get(trade.id)
  if (input === undefined) return null
  return {
    job: facts,
    room,
    input,
    at: { file: room.file, path: ["work", trade.id] },
    facts: facts.passed.get(room.id) ?? {},
  }
}

type TaskFor = (trade: Trade, room: Room) => Task<unknown> | null

/** Twice round, so that a trade hears what those after it offer too (the tiler's floor decides the height of a lining). */
const factRounds = 2

/** What the trades offer of each room, room by room and trade by trade. */
function passedFacts(
  trades: readonly Trade[],
  rooms: readonly Room[],
  taskFor: (trade: Trade, room: Room, known: Passed) => Task<unknown> | null,
): Passed {
  const passed = new Map<string, RoomFacts>()
  for (let round = 0; round < factRounds; round++) {
    for (const trade of trades) {
      for (const room of rooms) {
        const task = trade.facts ? taskFor(trade, room, passed) : null
        if (task) passed.set(room.id, { ...passed.get(room.id), ...trade.facts!(task) })
      }
    }
  }
  return passed
}

function roomResults(trades: readonly Trade[], rooms: readonly Room[], taskFor: TaskFor): TradeResult[] {
  return rooms.flatMap((room) =>
    trades.flatMap((trade): TradeResult[] => {
      const task = taskFor(trade, room)
      if (!task) return []
      const work = trade.work(task)
      return [{ trade: trade.id, title: trade.title, room, work, sheets: trade.sheets(task, work) }]
    }),
  )
}

async function acrossResults(
  trades: readonly Trade[],
  inRooms: readonly TradeResult[],
  facts: JobFacts,
): Promise<TradeResult[]> {
  const results: TradeResult[] = []
  for (const trade of trades) {
    const rooms = inRooms.flatMap(({ trade: id, room, work }) =>
      id === trade.id && room ? [{ room, work }] : [],
    )
    if (!trade.across || rooms.length === 0) continue
    const { work, sheets } = await trade.across(facts, rooms)
    results.push({ trade: trade.id, title: trade.title, room: null, work, sheets })
  }
  return results
}

function lengthsInHand(job: Job): Map<string, number[]> {
  const lengths = new Map<string, number[]>()
  for (const { product, amount } of job.inHand) {
    if (job.products.get(product)?.kind === "length")
      lengths.set(product, [...(lengths.get(product) ?? []), amount])
  }
  return lengths
}

/** True if any finding of the result stops the job. */
export function stops(findings: readonly Finding[]): boolean {
  return findings.some((finding) => finding.severity === "error")
}
