import type { Page } from "puppeteer"

import type { Mm } from "../../kernels/units.ts"

/** Something on a sheet that the paper would cut off, shrink or print over, as found before printing. */
export interface LayoutFault {
  /**
   * `past-width`: reaches past the width of its page. `cut-off`: a box hides part of what is in it. `floating`: taken out of
   * the flow, so it may lie over its neighbours. `shrunk`: the browser printed the whole document smaller. `missing-sign`: a
   * character that no font has, printed as an empty box.
   */
  kind: "past-width" | "cut-off" | "floating" | "shrunk" | "missing-sign"
  /** The `data-sheet` of the sheet it is on, or empty if it is on none. */
  sheet: string
  /** Its text, or its tag where it has none, or for what shows only in print its page; at most 80 characters. */
  text: string
  /** How far it goes too far; 0 for the kinds that are no length. */
  by: Mm
}

/**
 * Checks a page that is laid out for print at its content width.
 * No text and no element may reach past the width of its page; no box that clips may hold more than it
 * shows, but those marked `data-may-clip`; nothing may float free of the flow, but what is marked
 * `data-may-float` and what is inside a drawing.
 * A sheet whose style carries `--margin-texts` (a CSS string of JSON: text, font, width and height in mm) has them measured.
 * A sheet on wider or narrower paper names its content width in mm as `data-page-width`.
 * @param contentWidth width between the margins, mm
 * @returns the faults in document order; empty when all is well
 */
export async function layoutFaults(page: Page, contentWidth: Mm): Promise<LayoutFault[]> {
  await page.evaluate("globalThis.__name ??= (named) => named")
  return page.evaluate(faultsInPage, contentWidth)
}

/** Runs inside the browser, so it may use nothing from outside itself. */
function faultsInPage(contentWidth: number): LayoutFault[] {
  const pixelsPerMm = 96 / 25.4
  const tolerance = 0.75
  const found: { element: Element; fault: LayoutFault }[] = []

  const report = (kind: LayoutFault["kind"], element: Element, more: { text?: string; by: number }): void => {
    const text = (more.text ?? element.textContent ?? "").replace(/\s+/g, " ").trim().slice(0, 80)
    const sheet = element.closest("[data-sheet]")?.getAttribute("data-sheet") ?? ""
    const by = Math.round((more.by / pixelsPerMm) * 10) / 10
    const named = text || `<${element.tagName.toLowerCase()}>`
    found.push({ element, fault: { kind, sheet, text: named, by } })
  }

  const innermost = (): LayoutFault[] => {
    const wide = found.filter(({ fault }) => fault.kind === "past-width")
    const holdsAnother = (element: Element): boolean =>
      wide.some((other) => other.element !== element && element.contains(other.element))
    const kept = found.filter(({ element, fault }) => fault.kind !== "past-width" || !holdsAnother(element))
    return kept.map(({ fault }) => fault)
  }

  const limitsOf = (element: Element): { left: number; right: number } => {
    const sheet = element.closest("[data-page-width]")
    if (sheet === null) return { left: 0, right: contentWidth * pixelsPerMm }
    const left = sheet.getBoundingClientRect().left
    return { left, right: left + Number(sheet.getAttribute("data-page-width")) * pixelsPerMm }
  }

  const past = (rect: DOMRect, element: Element): number => {
    if (rect.width === 0 || rect.height === 0) return 0
    const { left, right } = limitsOf(element)
    return Math.max(rect.right - right, left - rect.left) - tolerance
  }

  const hidden = (style: CSSStyleDeclaration): boolean =>
    style.display === "none" || style.visibility === "hidden"

  const checkWidth = (element: Element): void => {
    const by = past(element.getBoundingClientRect(), element)
    if (by > 0) report("past-width", element, { by: by + tolerance })
  }

  const checkFlow = (element: Element, style: CSSStyleDeclaration): void => {
    if (!(element instanceof HTMLElement)) return
    if (/absolute|fixed|sticky/.test(style.position) && element.closest("[data-may-float]") === null)
      report("floating", element, { by: 0 })
    const clips = /hidden|clip|auto|scroll/.test(`${style.overflowX} ${style.overflowY}`)
    if (!clips || element.closest("[data-may-clip]") !== null || element === document.body) return
    const over = Math.max(
      element.scrollWidth - element.clientWidth,
      element.scrollHeight - element.clientHeight,
    )
    if (over > 1) report("cut-off", element, { by: over })
  }

  const checkText = (element: Element): boolean => {
    let tooWide = false
    for (const node of element.childNodes) {
      if (node.nodeType !== Node.TEXT_NODE || !node.textContent?.trim()) continue
      const range = document.createRange()
      range.selectNodeContents(node)
      const worst = Math.max(...[...range.getClientRects()].map((rect) => past(rect, element)), 0)
      if (worst <= 0) continue
      report("past-width", element, { text: node.textContent, by: worst + tolerance })
      tooWide = true
    }
    return tooWide
  }

  const marginTexts = (element: Element): { text: string; font: string; width: number; height: number }[] => {
    const written = getComputedStyle(element).getPropertyValue("--margin-texts").trim()
    if (written === "") return []
    const signs = written.slice(1, -1)
    return JSON.parse(
      signs.replace(/\\([0-9a-f]{1,6}) ?/gi, (_, code) => String.fromCodePoint(parseInt(code, 16))),
    )
  }

  const checkMargins = (element: Element): void => {
    for (const { text, font, width, height } of marginTexts(element)) {
      const trial = document.createElement("div")
      trial.style.cssText = `position:absolute;visibility:hidden;white-space:pre-line;overflow-wrap:anywhere;width:${width}mm`
      trial.style.font = font
      trial.textContent = text
      document.body.append(trial)
      const over = trial.scrollHeight - height * pixelsPerMm
      trial.remove()
      if (over > tolerance) report("cut-off", element, { text, by: over })
    }
  }

  for (const sheet of document.body.querySelectorAll("[data-sheet]")) checkMargins(sheet)
  for (const element of document.body.querySelectorAll("*")) {
    const style = getComputedStyle(element)
    if (hidden(style) || element.closest("script, style, template") !== null) continue
    if (!checkText(element)) checkWidth(element)
    checkFlow(element, style)
  }
  return innermost()
}
