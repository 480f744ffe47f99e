import type { At } from "../kernels/finding.ts"
import type { Place } from "./place.ts"
import type { HouseFile } from "./schema/house.ts"
import type { JobFile } from "./schema/job.ts"
import type { Product, ProductsFile } from "./schema/products.ts"
import type { MoneyFile, ProgrammeFile } from "./schema/programme.ts"
import type { RoomFile } from "./schema/room.ts"
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
  programme: ProgrammeFile
  money: MoneyFile | null
  /** What is written for each trade in each room, by room id and then trade id, checked and with defaults. */
  works: ReadonlyMap<string, ReadonlyMap<string, unknown>>
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
  /** Where a finding of any stage stands in the author's files. */
  locate(at: At): Place
}
