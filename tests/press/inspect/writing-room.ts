import { pathToFileURL } from "node:url"
import type { Press } from "../../../src/press/browser/launch.ts"

/** What a document has to write on and to tick, as the browser lays it out. */
export interface WritingRoom {
  /** Places to write by hand and boxes to tick, counted. */
  places: number
  ticks: number
  /** One line for each that is too small, or no box. */
  faults: string[]
}

/** Least height of what is written on, mm (a line of ordinary handwriting; common practice on forms), and side of a tick box. */
export const leastHeight = 8
export const leastTick = 4

/**
 * Opens a document as for print and measures every place to write and every box to tick, once as it is and once under each style.
 * @param styles added to the page one at a time, to see that the measuring finds what is wrong
 */
export async function writingRooms(
  press: Press,
  htmlPath: string,
  styles: readonly string[],
): Promise<WritingRoom[]> {
  const page = await press.newPage()
  try {
    await page.emulateMediaType("print")
    await page.setViewport({ width: 680, height: 1000 })
    await page.goto(pathToFileURL(htmlPath).href, { waitUntil: "load" })
    await page.evaluate("globalThis.__name ??= (named) => named")
    const found: WritingRoom[] = []
    for (const style of ["/* as it is */", ...styles]) {
      const tag = await page.addStyleTag({ content: style })
      found.push(await page.evaluate(measured, { leastHeight, leastTick }))
      await tag.evaluate((element) => element.remove())
    }
    return found
  } finally {
    await page.close()
  }
}

/** Runs inside the browser, so it may use nothing from outside itself. */
function measured(least: { leastHeight: number; leastTick: number }): WritingRoom {
  const mm = 25.4 / 96
  const slack = 0.05
  const faults: string[] = []
  const where = (element: Element) =>
    `${element.closest("[data-sheet]")?.getAttribute("data-sheet")}: ${element.closest("table")?.querySelector("caption")?.textContent ?? element.parentElement?.textContent ?? ""}`
      .replace(/\s+/g, " ")
      .slice(0, 90)
  const cells = [...document.querySelectorAll("td.as-write")].filter(
    (cell) => cell.textContent?.trim() === "",
  )
  const lines = [...document.querySelectorAll(".write, .boxes .box")].filter(
    (line) => !line.closest("td.as-write"),
  )
  for (const place of [...cells, ...lines]) {
    const { height, width } = place.getBoundingClientRect()
    if (height * mm < least.leastHeight - slack)
      faults.push(`${where(place)}: ${(height * mm).toFixed(1)} mm high`)
    if (width * mm < least.leastHeight) faults.push(`${where(place)}: ${(width * mm).toFixed(1)} mm wide`)
  }
  const ticks = [...document.querySelectorAll(".tick")]
  for (const tick of ticks) {
    const { height, width } = tick.getBoundingClientRect()
    const style = getComputedStyle(tick)
    const edges = [
      style.borderTopWidth,
      style.borderRightWidth,
      style.borderBottomWidth,
      style.borderLeftWidth,
    ]
    const isClosed = edges.every((edge) => Number.parseFloat(edge) >= 1)
    if (!isClosed || tick.textContent !== "") faults.push(`${where(tick)}: no empty box to tick`)
    if (height * mm < least.leastTick || Math.abs(height - width) > 1)
      faults.push(
        `${where(tick)}: box to tick of ${(width * mm).toFixed(1)} × ${(height * mm).toFixed(1)} mm`,
      )
  }
  const bare = [...document.querySelectorAll("td.as-tick")].filter(
    (cell) => cell.querySelector(".tick") === null && !cell.closest("tr.row-group, tr.row-total"),
  )
  for (const cell of bare) faults.push(`${where(cell)}: no box to tick but "${cell.textContent}"`)
  return { places: cells.length + lines.length, ticks: ticks.length, faults }
}
