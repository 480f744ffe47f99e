import type { Job } from "./intake/job.ts"
import type { Variation } from "./intake/schema/variations.ts"
import { clockAt } from "./kernels/calendar/instant.ts"
import type { Finding } from "./kernels/finding.ts"
import { bookedFindings } from "./orders/booked.ts"
import { lateChoices } from "./orders/choices.ts"
import { cutLists } from "./orders/cut-lists.ts"
import { deliveriesOf } from "./orders/deliveries.ts"
import { holdsOf, isAnyBroken } from "./orders/holds.ts"
import { orderList } from "./orders/order-list.ts"
import type { CutList } from "./orders/orders.ts"
import { priceOf } from "./orders/price.ts"
import { variedJob } from "./orders/varied-job.ts"
import { datedProgramme } from "./programme/dated.ts"
import type { Hold, Programme } from "./programme/programme.ts"
import { rulesInForce } from "./rulebook/rules.ts"
import { allRules } from "./rulebook-of.ts"
import type { Account, JobResult, TradeResult } from "./sheets/job-result.ts"
import type { House, Room } from "./survey/room.ts"
import { surveyHouse } from "./survey/survey-house.ts"
import type { JobFacts, Passed, RoomFacts, Task, Trade, Work } from "./trades/trade.ts"

/**
 * One job worked out, stage by stage:
 *
 *     job as read -> rulebook -> survey -> facts passed between trades -> trades room by room -> trades across the job
 *                 -> cut lists -> programme -> orders -> price
 *
 * Accepted variations are part of the job; with any variation the job is worked out without it too, and the account says what each
 * changes. Sheets are made from the result (`sheets/`), paper and site from the sheets (`press/`). Same job, same result.
 */
export async function workOut(job: Job, trades: readonly Trade[]): Promise<JobResult> {
  const done: Done = new Map()
  const accepted = job.variations.filter((variation) => variation.accepted)
  const contract = await asAgreed(job, [], { trades, done })
  const account: Account = { contract, changes: [] }
  let now = contract
  for (const [index, variation] of accepted.entries()) {
    const after = await asAgreed(job, accepted.slice(0, index + 1), { trades, done })
    account.changes.push({ variation, before: now, after })
    now = after
  }
  for (const variation of job.variations.filter((each) => !each.accepted)) {
    const after = variation.declined ? null : await asAgreed(job, [...accepted, variation], { trades, done })
    account.changes.push({ variation, before: now, after })
  }
  return { ...now, account: account.changes.length > 0 ? account : null }
}

/** What was worked out, by all that it was worked out from: most rooms are the same with a variation and without. */
type Done = Map<string, unknown>

function once<T>(done: Done, key: string, make: () => T): T {
  if (!done.has(key)) done.set(key, make())
  return done.get(key) as T
}

/** A number of its own for each work that was kept, so that what rests on the same works is known again. */
function numberOf(work: Work, done: Done): number {
  const numbers = once(done, "numbers", () => new Map<Work, number>())
  const number = numbers.get(work) ?? numbers.size
  numbers.set(work, number)
  return number
}

/** The job with some of its variations put in place. */
async function asAgreed(
  given: Job,
  variations: readonly Variation[],
  { trades, done }: { trades: readonly Trade[]; done: Done },
): Promise<JobResult> {
  const job = variedJob(given, variations)
  const { rules, findings: overridden } = rulesInForce(allRules(trades), job.job.overrides, {
    file: "job.yaml",
    path: ["overrides"],
  })
  const written = JSON.stringify([[...job.chosen], job.house.doors])
  const { house, findings: surveyed } = once(done, `house/${written}`, () => surveyHouse(job, rules))
  const facts = jobFacts(job, house, { rules, passed: new Map() })
  const passed = passedFacts(trades, house.rooms, {
    taskFor: (trade, room, known) => taskOf(job, { ...facts, passed: known }, { trade, room }),
    offered: (trade, task, heard) =>
      once(
        done,
        `facts/${trade.id}/${task.room.id}/${JSON.stringify([task.input, [...heard]])}/${written}`,
        () => trade.facts!(task),
      ),
  })
  const known = { ...facts, passed }
  const shared = `${JSON.stringify([...passed])}/${written}`
  const inRooms = roomResults(trades, house.rooms, {
    taskFor: (trade, room) => taskOf(job, known, { trade, room }),
    done: (trade, room, task, make) =>
      once(done, `${trade.id}/${room.id}/${JSON.stringify(task.input)}/${shared}`, make),
  })
  const across = await acrossResults(trades, inRooms, {
    facts: known,
    done: (trade, works, make) =>
      once(done, `across/${trade.id}/${works.map((work) => numberOf(work, done)).join()}/${shared}`, make),
  })
  const results = [...inRooms, ...across]
  const works = results.map((each) => each.work)
  const pieces = works.flatMap((work) => work.pieces)
  const { lists, findings: sawn } = await once(done, `saw/${JSON.stringify(pieces)}/${shared}`, () =>
    cutLists(pieces, known, lengthsInHand(job)),
  )
  const { programme, lines, holds } = datedAndOrdered(job, works, { facts: known, lists })
  const sums = variations.flatMap((variation) => variation.sums)
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
    holds,
    orders: { lines, cutLists: lists, findings: sawn },
    deliveries: deliveriesOf({ lines, suppliers: job.suppliers, stores: job.stores }),
    price: job.money ? priceOf({ lines, programme, file: job.money, sums }) : null,
    account: null,
    findings: [
      ...overridden,
      ...surveyed,
      ...works.flatMap((work) => work.findings),
      ...sawn,
      ...programme.findings,
      ...bookedFindings(job.programme.booked, lines),
      ...lateChoices(job.money, lines),
    ],
  }
}

/**
 * The programme and the orders, which follow from it backwards; where ordered goods or the client's choices cannot be there in time, the
 * programme once more with the steps that need them held.
 */
function datedAndOrdered(
  job: Job,
  works: readonly Work[],
  { facts, lists }: { facts: JobFacts; lists: readonly CutList[] },
) {
  const steps = works.flatMap((work) => work.steps)
  const dated = (holds: readonly Hold[]) => {
    const { rules, house: site } = facts
    return datedProgramme({ steps, site, file: job.programme, rules, zone: job.job.zone, holds })
  }
  const ordered = (programme: Programme) =>
    orderList({
      quantities: works.flatMap((work) => work.quantities),
      lists,
      products: job.products,
      inHand: job.inHand,
      suppliers: job.suppliers,
      programme,
      job: facts,
      preparedOn: job.job.prepared.on,
    })
  const first = dated([])
  const lines = ordered(first)
  const holds = holdsOf({
    lines,
    steps,
    suppliers: job.suppliers,
    booked: job.programme.booked,
    decisions: job.money?.client.decisions ?? [],
    calendar: first.calendar,
    preparedOn: job.job.prepared.on,
  })
  const starts = new Map(first.steps.map((each) => [each.step.key, clockAt(each.start, first.zone).date]))
  if (!isAnyBroken(holds, (key) => starts.get(key))) return { programme: first, lines, holds }
  const programme = dated(holds)
  return { programme, lines: ordered(programme), holds }
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
    at: job.writtenAt?.get(`${room.id}/${trade.id}`) ?? { file: room.file, path: ["work", trade.id] },
    facts: facts.passed.get(room.id) ?? {},
  }
}

/** Twice round, so that a trade hears what those after it offer too (the tiler's floor decides the height of a lining). */
const factRounds = 2

/** What the trades offer of each room, room by room and trade by trade. */
function passedFacts(
  trades: readonly Trade[],
  rooms: readonly Room[],
  {
    taskFor,
    offered,
  }: {
    taskFor: (trade: Trade, room: Room, known: Passed) => Task<unknown> | null
    /** What a trade offers where it has heard what is passed so far. */
    offered: (trade: Trade, task: Task<unknown>, heard: Passed) => RoomFacts
  },
): Passed {
  const passed = new Map<string, RoomFacts>()
  for (let round = 0; round < factRounds; round++) {
    for (const trade of trades) {
      for (const room of rooms) {
        const task = trade.facts ? taskFor(trade, room, passed) : null
        if (task) passed.set(room.id, { ...passed.get(room.id), ...offered(trade, task, passed) })
      }
    }
  }
  return passed
}

interface RoomRun {
  taskFor: (trade: Trade, room: Room) => Task<unknown> | null
  /** A result that was made before, or makes it. */
  done: (trade: Trade, room: Room, task: Task<unknown>, make: () => TradeResult) => TradeResult
}

function roomResults(
  trades: readonly Trade[],
  rooms: readonly Room[],
  { taskFor, done }: RoomRun,
): TradeResult[] {
  return rooms.flatMap((room) =>
    trades.flatMap((trade): TradeResult[] => {
      const task = taskFor(trade, room)
      if (!task) return []
      const make = (): TradeResult => {
        const work = trade.work(task)
        return { trade: trade.id, title: trade.title, room, work, sheets: trade.sheets(task, work) }
      }
      return [done(trade, room, task, make)]
    }),
  )
}

async function acrossResults(
  trades: readonly Trade[],
  inRooms: readonly TradeResult[],
  {
    facts,
    done,
  }: {
    facts: JobFacts
    /** A result that was made before from the same works, or makes it. */
    done: (trade: Trade, works: readonly Work[], make: () => Promise<TradeResult>) => Promise<TradeResult>
  },
): Promise<TradeResult[]> {
  const results: TradeResult[] = []
  for (const trade of trades) {
    const rooms = inRooms.flatMap(({ trade: id, room, work }) =>
      id === trade.id && room ? [{ room, work }] : [],
    )
    if (!trade.across || rooms.length === 0) continue
    const make = async (): Promise<TradeResult> => {
      const { work, sheets } = await trade.across!(facts, rooms)
      return { trade: trade.id, title: trade.title, room: null, work, sheets }
    }
    results.push(
      await done(
        trade,
        rooms.map((each) => each.work),
        make,
      ),
    )
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
