import type { JobFile } from "../intake/schema/job.ts"
import type { MoneyFile } from "../intake/schema/money.ts"
import type { ProgrammeFile } from "../intake/schema/programme.ts"
import type { Variation } from "../intake/schema/variations.ts"
import type { Finding } from "../kernels/finding.ts"
import type { SheetModel } from "../kernels/paper.ts"
import type { IsoDate } from "../kernels/units.ts"
import type { Deliveries } from "../orders/deliveries.ts"
import type { Orders } from "../orders/orders.ts"
import type { Price } from "../orders/price.ts"
import type { IssuedProgramme } from "../programme/compare.ts"
import type { Hold, Programme } from "../programme/programme.ts"
import type { Rules } from "../rulebook/rules.ts"
import type { House, Room } from "../survey/room.ts"
import type { Passed, Work } from "../trades/trade.ts"

/** A trade's result in one room (or across the job, where room is null), with the sheets it makes of it. */
export interface TradeResult {
  trade: string
  title: string
  room: Room | null
  work: Work
  sheets: SheetModel[]
}

/** What a variation changes: the job worked out before it and with it; `after` is null where it was declined. */
export interface Change {
  variation: Variation
  before: JobResult
  after: JobResult | null
}

/** The running account: the job as first agreed, then each accepted variation in order, then those that are open or declined. */
export interface Account {
  contract: JobResult
  changes: Change[]
}

/** The programme as it stood under an earlier letter. */
export interface IssuedBefore {
  revision: string
  on: IsoDate
  programme: IssuedProgramme
}

/** Everything worked out for one job; sheets are made from it and from nothing else. */
export interface JobResult {
  job: JobFile
  house: House
  rules: Rules
  programmeFile: ProgrammeFile
  moneyFile: MoneyFile | null
  trades: { id: string; title: string }[]
  results: TradeResult[]
  /** What the trades pass on of each room. */
  passed: Passed
  programme: Programme
  /** Days before which steps cannot begin for want of goods or a choice. */
  holds: readonly Hold[]
  /** The programme of the last issue whose days were others than now; none before there is one. */
  issuedBefore?: IssuedBefore
  orders: Orders
  deliveries: Deliveries
  price: Price | null
  /** Null where no variation was written. */
  account: Account | null
  findings: Finding[]
}

/** The results of one room, in the order of the trades. */
export function resultsIn(result: JobResult, room: Room): TradeResult[] {
  return result.results.filter((each) => each.room?.id === room.id)
}
