import type { At } from "../kernels/finding.ts"
import type { Place } from "./place.ts"
import type { HouseFile } from "./schema/house.ts"
import type { JobFile } from "./schema/job.ts"
import type { MoneyFile } from "./schema/money.ts"
import type { Product, ProductsFile } from "./schema/products.ts"
import type { ProgrammeFile } from "./schema/programme.ts"
import type { RoomFile } from "./schema/room.ts"
import type { Variation } from "./schema/variations.ts"
import type { LocatedFinding } from "./yaml-file.ts"

/** A room's file as written, and the file's name relative to the job's folder. */
export type RoomWritten = RoomFile & { file: string }

/** One file of a job as text: `rooms/a1.yaml`, or `../catalogue.yaml` for the one that jobs share. */
export interface Source {
  file: string
  text: string
}

/** A whole job as its author wrote it, checked, with defaults filled in. */
export interface Job {
  ref: string
  /** The job's folder. */
  dir: string
  job: JobFile
  /** Its doors' `work` is what the trade that hangs doors makes of it, with defaults; `{}` where nothing is written. */
  house: HouseFile
  /** In natural order of their ids: A1, A2, A10, B1. */
  rooms: RoomWritten[]
  /** The catalogue's products and the job's own, by id. */
  products: ReadonlyMap<string, Product>
  /** Product id for each use. */
  chosen: ReadonlyMap<string, string>
  inHand: ProductsFile["inHand"]
  suppliers: ProductsFile["suppliers"]
  stores: ProductsFile["stores"]
  programme: ProgrammeFile
  money: MoneyFile | null
  /** In the order they were written; the accepted ones are part of the job. */
  variations: Variation[]
  /** What is written for each trade in each room, by room id and then trade id, checked and with defaults. */
  works: ReadonlyMap<string, ReadonlyMap<string, unknown>>
  /** Where the work of a room (`A1/floors`) or a doorway (`D1`) was written, where a variation has put it in place. */
  writtenAt?: ReadonlyMap<string, At>
  /** Issue records, in order of file name. */
  issues: { file: string; record: unknown }[]
  sources: Source[]
}

/** One job folder as read. */
export interface ReadJob {
  /** The folder's name. */
  ref: string
  dir: string
  /** Absent if any finding is an error. */
  job?: Job
  findings: LocatedFinding[]
  sources: Source[]
  /** Tells where findings of any stage stand in the author's files; it holds the files parsed, so drop it when they are told. */
  locator(): (at: At) => Place
}
