import type { Page } from "puppeteer"

import { Fault } from "../../kernels/fault.ts"

/**
 * Loads every font face the page declares, used in its body or not: a face used in a margin box alone
 * would else be missing from the first print.
 * @throws Fault naming the faces that did not load
 */
export async function loadFonts(page: Page): Promise<void> {
  const missing = await page.evaluate(async () => {
    const faces = [...document.fonts]
    await Promise.allSettled(faces.map((face) => face.load()))
    await document.fonts.ready
    return faces.filter((face) => face.status !== "loaded").map((face) => `${face.family} ${face.weight}`)
  })
  if (missing.length > 0) throw new Fault(`fonts that did not load: ${missing.join(", ")}`)
}
