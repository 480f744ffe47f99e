import type { Product } from "../intake/schema/products.ts"
import { cutPlan } from "../kernels/cutting/cut-plan.ts"
import type { Finding } from "../kernels/finding.ts"
import { money } from "../kernels/money.ts"
import { mmText } from "../kernels/units.ts"
import type { JobFacts, Piece } from "../trades/trade.ts"
import type { CutList } from "./orders.ts"
import { sparesOf } from "./spares.ts"

/** Prices are given to the kernel as whole hundredths of a penny, so that sums stay whole. */
const hundredthsOfAPenny = 10_000

/** Lengths in hand by product id, mm. */
export type LengthsInHand = ReadonlyMap<string, number[]>

/**
 * The saw's work, product by product: every piece of every trade, sawn from the lengths that cost least.
 * Lengths in hand are sawn first; each profile has spare lengths by its material's rule.
 * @returns plans in order of product id; a piece longer than any stock length, or than what goes up the stair, and stock that has run
 * out are findings that name piece and wall
 */
export async function cutLists(
  pieces: readonly Piece[],
  job: JobFacts,
  inHand: LengthsInHand,
): Promise<{ lists: CutList[]; findings: Finding[] }> {
  const lists: CutList[] = []
  const findings: Finding[] = []
  for (const id of [...new Set(pieces.map((piece) => piece.product))].sort()) {
    const product = job.product(id, "length")
    if (!product) continue
    const own = pieces.filter((piece) => piece.product === id)
    const plan = await cutPlan({
      kerf: job.rules.value("saw-kerf"),
      endTrim: job.rules.value("saw-end-trim"),
      keepFrom: job.rules.value("saw-offcut-keep"),
      stocks: stocksOf(product),
      offcutsInHand: (inHand.get(id) ?? []).map((length, index) => ({
        id: `in hand ${index + 1}`,
        length,
        available: 1,
      })),
      items: own.map((piece) => ({ id: piece.mark, length: Math.round(piece.length * 10) / 10, count: 1 })),
    })
    findings.push(...plan.unplaced.map((left) => unplacedFinding(left, own, product)))
    const longest = Math.max(0, ...plan.bars.map((bar) => bar.length))
    findings.push(...own.flatMap((piece) => tooLongForStair(piece, job)))
    lists.push({
      product,
      pieces: own,
      plan,
      cutBelow: longest > job.carry.longest ? job.carry.longest : null,
      spares: sparesOf(product, { plan, pieces: own }, job.rules),
    })
  }
  return { lists, findings }
}

function stocksOf(product: Extract<Product, { kind: "length" }>) {
  return product.lengths.map(({ length, price, available }) => ({
    id: String(length),
    length,
    cost: money(price).times(hundredthsOfAPenny).round().toNumber(),
    ...(available === undefined ? {} : { available }),
  }))
}

function unplacedFinding(
  left: { itemId: string; length: number; reason: string },
  pieces: readonly Piece[],
  product: Product,
): Finding {
  const piece = pieces.find((each) => each.mark === left.itemId)
  const where = piece ? placeText(piece) : left.itemId
  const needs = `Piece ${left.itemId} (${where}) needs ${mmText(left.length)} mm; `
  const at = { file: "products.yaml", path: ["chosen"] }
  return left.reason === "stock-run-out"
    ? {
        code: "stock-run-out",
        severity: "error",
        at,
        message: `${needs}the lengths of ${product.name} that can be had are all used up by other pieces.`,
        mend: "Raise available: of its lengths in the catalogue if more can be had, or choose another product for some of the pieces.",
      }
    : {
        code: "piece-longer-than-stock",
        severity: "error",
        at,
        message: `${needs}no length of ${product.name} holds it.`,
        mend: "Choose a product sold in longer lengths, or allow a joint in the run.",
      }
}

/** A piece that cannot be carried to its storey. Pieces for the lowest storey go up no stair. */
function tooLongForStair(piece: Piece, { house, carry }: JobFacts): Finding[] {
  const storey = house.rooms.find((room) => room.id === piece.room)?.storey
  if (piece.length <= carry.longest || !storey || storey.id === house.storeys[0]?.id) return []
  return [
    {
      code: "piece-too-long-for-stair",
      severity: "warning",
      at: { file: "job.yaml", path: ["carry", "longest"] },
      message: `Piece ${piece.mark} (${placeText(piece)}) is ${mmText(piece.length)} mm; no more than ${mmText(carry.longest)} mm goes up the stair.`,
      mend: "Joint it, or find another way up for it and set carry: longest to that.",
    },
  ]
}

function placeText({ what, room, wall }: Piece): string {
  return `${what}, room ${room}${wall === undefined ? "" : `, wall ${wall}`}`
}
