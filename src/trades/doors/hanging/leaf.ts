import type { DoorEntry } from "../../../intake/schema/house.ts"
import type { ProductOf } from "../../../intake/schema/products.ts"
import type { Kilograms, Mm } from "../../../kernels/units.ts"
import type { JobFacts } from "../../trade.ts"
import type { DoorAsk } from "../escape/asks.ts"
import { isOpenWay } from "../escape/ways.ts"
import type { DoorInputs } from "../inputs.ts"
import type { RulesRead } from "../rules-read.ts"

/** A leaf to hang, whether bought or taken back up. */
export interface Leaf {
  name: string
  /** Product id; null for an old leaf that goes back. */
  product: string | null
  width: Mm
  height: Mm
  thickness: Mm
  /** kg; null where an old leaf was not weighed. */
  mass: Kilograms | null
  /** Minutes its label states; 0 for none. */
  minutes: number
  trim: ProductOf<"leaf">["trim"]
  face: ProductOf<"leaf">["face"]
}

/** The leaf to hang: the one named, else the job's own for fire-resisting or ordinary doors; an old leaf where it goes back. */
export function leafToHang(
  work: DoorInputs,
  ask: DoorAsk,
  job: Pick<JobFacts, "product" | "chosen">,
  rules: RulesRead,
): Leaf | null {
  if (work.hang === "stays") return null
  if (work.hang === "rehang") return work.was ? oldLeaf(work.was, rules) : null
  const id = work.leaf ?? (ask.minutes > 0 ? job.chosen("fire-leaf") : job.chosen("leaf"))
  const product = job.product(id, "leaf")
  return product ? newLeaf(product) : null
}

/** What hangs or will hang there in words: `FD30 leaf, 44 x 762 x 1981`. */
export function leafText(leaf: Leaf | null, door: DoorEntry, work: DoorInputs): string {
  if (leaf) {
    const kind = leaf.minutes > 0 ? `FD${leaf.minutes}` : "ordinary leaf"
    const smoke = leaf.minutes > 0 && work.smoke ? "S" : ""
    return `${kind}${smoke}: ${leaf.name}`
  }
  if (isOpenWay(door)) return "no leaf"
  if (work.hang === "stays") return `stays: ${door.leafNow ?? "as it hangs"}`
  if (work.hang === "rehang") return `goes back: ${door.leafNow ?? "the old leaf"}`
  return "not chosen"
}

/** Minutes of fire resistance of what will hang there; 0 where none is shown. */
export function minutesHung(leaf: Leaf | null, work: DoorInputs): number {
  if (leaf) return leaf.minutes
  return work.hang === "stays" && work.was ? minutesOf(work.was.fire) : 0
}

function newLeaf(product: ProductOf<"leaf">): Leaf {
  const { name, id, width, height, thickness, mass, fire, trim, face } = product
  return { name, product: id, width, height, thickness, mass, minutes: minutesOf(fire), trim, face }
}

function oldLeaf(was: NonNullable<DoorInputs["was"]>, rules: RulesRead): Leaf {
  const minutes = minutesOf(was.fire)
  const edge = minutes > 0 ? 0 : rules.value("door-trim-old-edge")
  const foot = minutes > 0 ? 0 : rules.value("door-trim-old-foot")
  return {
    name: `old leaf, ${was.thickness} x ${was.width} x ${was.height}`,
    product: null,
    width: was.width,
    height: was.height,
    thickness: was.thickness,
    mass: was.mass ?? null,
    minutes,
    trim: { hinge: edge, lock: edge, head: 0, foot },
    face: "painted",
  }
}

function minutesOf(fire: "none" | "20" | "30" | "60"): number {
  return fire === "none" ? 0 : Number(fire)
}
