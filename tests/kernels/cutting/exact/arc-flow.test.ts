import { expect, it } from "vitest"
import { cuttingModel } from "../../../../src/kernels/cutting/cutting-model.ts"
import { arcFlow } from "../../../../src/kernels/cutting/exact/arc-flow.ts"
import { cuttingFacts } from "../../../facts/cutting.ts"
import { singleStock } from "../problems.ts"

it.each(cuttingFacts.filter(({ value }) => value < 50))(
  "reaches the known optimum: $what ($source)",
  async ({ stock, kerf, items, value }) => {
    const { model } = cuttingModel(singleStock(stock, kerf, items))
    expect(await arcFlow(model, 20)).toMatchObject({ cost: value, bound: value, proven: true })
  },
)
