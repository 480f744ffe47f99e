import type { ModelData } from "highs"
import type { CuttingModel } from "../cutting-model.ts"
import type { Column } from "./master.ts"

/**
 * The linear program that covers the demand by given columns at least cost. Rows: one for each width, one for each limited stock.
 * Columns: those given, then one for each width but the last, without cost, by which its places hold the next narrower piece.
 */
export function coverProgram(model: CuttingModel, columns: readonly Column[], infinity: number): ModelData {
  const types = model.widths.length
  const limited = model.stocks.flatMap((stock, index) =>
    stock.limit === Number.POSITIVE_INFINITY ? [] : [index],
  )
  const slides = Math.max(0, types - 1)
  const starts = [0]
  const indices: number[] = []
  const values: number[] = []
  const put = (row: number, value: number) => {
    indices.push(row)
    values.push(value)
  }
  for (const { stock, counts } of columns) {
    counts.forEach((count, type) => {
      if (count > 0) put(type, count)
    })
    const row = limited.indexOf(stock)
    if (row >= 0) put(types + row, 1)
    starts.push(indices.length)
  }
  for (let type = 0; type < slides; type++) {
    put(type, -1)
    put(type + 1, 1)
    starts.push(indices.length)
  }
  const numCols = columns.length + slides
  const numRows = types + limited.length
  return {
    numCols,
    numRows,
    colCost: [
      ...columns.map(({ stock }) => model.stocks[stock]?.cost ?? 0),
      ...new Array<number>(slides).fill(0),
    ],
    colLower: new Array<number>(numCols).fill(0),
    colUpper: new Array<number>(numCols).fill(infinity),
    rowLower: [...model.demand, ...limited.map(() => -infinity)],
    rowUpper: [
      ...model.demand.map(() => infinity),
      ...limited.map((stock) => model.stocks[stock]?.limit ?? 0),
    ],
    matrix: { format: "csc", numRows, numCols, starts, indices, values },
  }
}
