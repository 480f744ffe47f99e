import type { Mm } from "../../kernels/units.ts"
import type { EndCut, JobFacts, Piece, Quantity } from "../trade.ts"
import { type Fitted, type HungDoor, hasCloser, liningOf, makesLining, stopOf } from "./hanging/hung-door.ts"
import { sealLength } from "./hanging/seals.ts"
import type { RulesRead } from "./rules-read.ts"

const trade = "doors"
const square: EndCut = { as: "square", setting: 0 }

/**
 * Lining legs and head, stop legs and head of one doorway, to be cut from lengths; empty where nothing is made. The legs stand on the
 * deck, so they are longer than the lining's height by what the highest floor lies over it; stops end at the floor.
 */
export function liningPieces(hung: HungDoor, job: JobFacts): Piece[] {
  const { fitted, door, home, work } = hung
  if (!fitted || !makesLining(door) || !fitted.lining) return []
  const { internalWidth, internalHeight, thickness } = fitted.lining
  const lining = liningOf(work, job)
  const stop = stopOf(work, job)
  const onWall = hung.here ? { wall: hung.here.wall } : {}
  const piece = (mark: string, product: string, what: string, length: Mm): Piece => ({
    mark: `${home.id}-${door.id}-${mark}`,
    trade,
    room: home.id,
    ...onWall,
    product,
    what,
    length,
    left: square,
    right: square,
    mayBeJointed: false,
  })
  const leg = internalHeight + hung.floors.highest - home.storey.deck
  const legs = lining
    ? [
        piece("L1", lining.id, `Door ${door.id}: lining leg`, leg),
        piece("L2", lining.id, `Door ${door.id}: lining leg`, leg),
        piece("L3", lining.id, `Door ${door.id}: lining head, over the legs`, internalWidth + 2 * thickness),
      ]
    : []
  const stops = stop
    ? [
        piece("T1", stop.id, `Door ${door.id}: stop head`, internalWidth),
        piece("T2", stop.id, `Door ${door.id}: stop leg`, internalHeight - stop.thickness),
        piece("T3", stop.id, `Door ${door.id}: stop leg`, internalHeight - stop.thickness),
      ]
    : []
  return [...legs, ...stops]
}

/** What one doorway takes: leaf, hinges, latch and the rest. */
export function doorQuantities(hung: HungDoor, job: JobFacts, rules: RulesRead): Quantity[] {
  const { fitted, door, home, work } = hung
  const count = (what: string, product: string | null, nr: number, from: string): Quantity => ({
    trade,
    room: home.id,
    what,
    product,
    net: nr,
    gross: nr,
    unit: "nr",
    from: `door ${door.id}: ${from}`,
  })
  const list: Quantity[] = []
  const isReplaced = work.hang === "new" && door.leafNow !== undefined
  if (isReplaced) list.push(count("Old leaf to take away", null, 1, door.leafNow ?? ""))
  if (!fitted) return list
  const fire = fitted.leaf.minutes > 0
  const { width, height, thickness, product } = fitted.leaf
  if (product) list.push(count(`Door leaf ${width} x ${height} x ${thickness}`, product, 1, "1 leaf"))
  if (makesLining(door)) list.push(count("Lining set", null, 1, "2 legs and a head, from lengths"))
  if (fitted.hinges) list.push(...hingeCounts(fitted, hung, count, job, rules))
  for (const each of furniture(hung, job)) list.push(count(each.what, each.product, 1, each.from))
  if (fire && work.seal !== false) list.push(strip(fitted, hung, job))
  if (fire && work.certificate?.pads) list.push(pads(fitted, count))
  return list
}

type Count = (what: string, product: string | null, nr: number, from: string) => Quantity

function hingeCounts(
  fitted: Fitted,
  hung: HungDoor,
  count: Count,
  job: JobFacts,
  rules: RulesRead,
): Quantity[] {
  const { hinges } = fitted
  if (!hinges) return []
  const screws = hinges.count * rules.value("door-hinge-screws")
  return [
    count(
      `Hinge ${hinges.length} mm${hinges.grade === null ? "" : `, grade ${hinges.grade}`}`,
      hingeOf(hung, job).hinge ?? null,
      hinges.count,
      `${hinges.count} hinges`,
    ),
    count(
      "Hinge screw",
      job.chosen("hinge-screw") ?? null,
      screws,
      `${hinges.count} x ${screws / hinges.count}`,
    ),
  ]
}

/** Product id of the hinges of a doorway, and the name of their screws, where they are chosen. */
export function hingeOf(hung: HungDoor, job: JobFacts): { hinge?: string; screw?: string } {
  const fire = (hung.leaf?.minutes ?? 0) > 0
  const hinge = hung.work.hinge ?? job.chosen(fire ? "fire-hinge" : "hinge") ?? job.chosen("hinge")
  const screw = job.product(job.chosen("hinge-screw"), "each")?.name
  return { ...(hinge ? { hinge } : {}), ...(screw ? { screw } : {}) }
}

/** Furniture of one doorway, with the product where one is chosen. */
export function furniture(
  hung: HungDoor,
  job: JobFacts,
): { what: string; product: string | null; from: string }[] {
  const { work } = hung
  const latch = work.latch ?? (work.hang === "new" && work.lock === undefined)
  const wants: [DoorFitting, string, string][] = [
    [latch, "latch", "Latch with keep"],
    [work.lock, "lock", "Lock with keep"],
    [work.handle ?? (work.hang === "new" ? true : undefined), "handle", "Handles, pair"],
    [work.thumbTurn, "thumb-turn", "Thumb-turn bolt, opened outside with a coin"],
    [hasCloser(work) ? work.closer : undefined, "closer", "Closer"],
    [work.thresholdSeal ? true : undefined, "threshold-seal", "Seal at the foot"],
  ]
  return wants.flatMap(([want, use, what]) => {
    if (want === undefined || want === false) return []
    const product = typeof want === "string" ? want : (job.chosen(use) ?? null)
    return [{ what, product, from: what.toLowerCase() }]
  })
}

/** A pad under each flap, one under the latch and one under its keep. */
function pads({ hinges }: Fitted, count: Count): Quantity {
  const flaps = 2 * (hinges?.count ?? 0)
  return count("Intumescent pad", null, flaps + 2, `${flaps} under hinge flaps, latch and keep`)
}

type DoorFitting = string | boolean | undefined

function strip(fitted: Fitted, hung: HungDoor, job: JobFacts): Quantity {
  const { work, door, home } = hung
  const net = sealLength(fitted.seals) / 1000
  const product = typeof work.seal === "string" ? work.seal : (job.chosen("fire-seal") ?? null)
  const what = hung.work.smoke || hung.ask.smoke ? "Intumescent strip with smoke blade" : "Intumescent strip"
  const parts = fitted.seals.map((cut) => `${cut.where} ${cut.lengths.map(Math.round).join(" + ")}`)
  return {
    trade,
    room: home.id,
    what,
    product,
    net,
    gross: net,
    unit: "m",
    from: `door ${door.id}: ${parts.join(", ")} mm`,
  }
}
