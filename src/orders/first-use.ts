import type { Product } from "../intake/schema/products.ts"
import type { DatedStep } from "../programme/programme.ts"
import { type Stage, stageRank } from "../trades/stages.ts"
import type { Step } from "../trades/trade.ts"

/** Stages that use up no goods: they protect, look, wait or clean. */
const takesNothing: ReadonlySet<Stage> = new Set(["prepare", "dry-out", "covers-off", "snag"])

/** The stages at which a kind of product is first wanted, by what it is (common practice); none where its trade decides. */
function stagesOf(product: Product): readonly Stage[] {
  switch (product.kind) {
    case "board":
      return ["acclimatise", "floor"]
    case "roll":
      return ["floor"]
    case "leaf":
      return ["hang"]
    case "tile":
      return ["tile"]
    case "length":
      return ["linings", "second-fix", "nosings"]
    case "liquid":
      return liquidStages[product.use]
    case "each":
      return []
  }
}

type Use = Extract<Product, { kind: "liquid" }>["use"]

const liquidStages: Readonly<Record<Use, readonly Stage[]>> = {
  mist: ["mist"],
  emulsion: ["white", "last-coat"],
  "white-emulsion": ["mist", "white", "last-coat"],
  "moisture-emulsion": ["mist", "white", "last-coat"],
  undercoat: ["woodwork"],
  trim: ["woodwork"],
  varnish: ["woodwork"],
  primer: ["prepare", "fill", "woodwork"],
  bond: ["prepare", "mist", "white"],
  "stain-block": ["prepare", "mist", "white"],
  oil: ["oil"],
}

/**
 * The steps that may use a product of a trade: those at one of the stages of its kind, or else all that use goods at all.
 * @param use the room it is for, or null for any of the trade's
 */
export function stepsUsing(
  product: Product,
  { trade, room }: { trade: string; room: string | null },
  steps: readonly Step[],
): Step[] {
  const own = steps.filter(
    (step) => step.trade === trade && (room === null || step.room === null || step.room === room),
  )
  const stages = stagesOf(product)
  const atStage = own.filter((step) => stages.includes(step.stage))
  if (atStage.length > 0) return atStage
  const working = own.filter((step) => !takesNothing.has(step.stage) && step.hours > 0)
  return working.length > 0 ? working : own
}

/**
 * The first step that uses a product of a trade: the first at one of the stages of its kind, or else the first that uses goods at all.
 * @param room the room it is for, or null for any of the trade's
 */
export function firstUse(
  product: Product,
  { trade, room }: { trade: string; room: string | null },
  steps: readonly DatedStep[],
): DatedStep | undefined {
  const using = new Set(
    stepsUsing(
      product,
      { trade, room },
      steps.map(({ step }) => step),
    ),
  )
  return earliest(steps.filter(({ step }) => using.has(step)))
}

function earliest(steps: readonly DatedStep[]): DatedStep | undefined {
  return [...steps].sort((a, b) => a.start - b.start || stageRank(a.step.stage) - stageRank(b.step.stage))[0]
}
