import type { Block, Row, SheetModel } from "../../src/kernels/paper.ts"

/** The tables of a sheet. */
export function tablesOf(sheet: SheetModel | null | undefined): Extract<Block, { kind: "table" }>[] {
  return (sheet?.blocks ?? []).filter((block) => block.kind === "table")
}

/** The rows of a sheet's tables, one after the other. */
export function rowsOf(sheet: SheetModel | null | undefined): Row[] {
  return tablesOf(sheet).flatMap((table) => table.rows)
}

/** The cells of a sheet's tables. */
export function cellsOf(sheet: SheetModel | null | undefined): string[][] {
  return rowsOf(sheet).map((row) => row.cells)
}

/** The cells under some headings of a sheet's first table. */
export function columnsOf(sheet: SheetModel | null | undefined, labels: readonly string[]): string[][] {
  const [table] = tablesOf(sheet)
  const places = labels.map((label) => table?.columns.findIndex((column) => column.label === label) ?? -1)
  return (table?.rows ?? []).map((row) => places.map((place) => row.cells[place] ?? ""))
}
