import { cpSync, existsSync } from "node:fs"
import { join } from "node:path"

/** Folder of the templates, from the top of the project. */
export const templatesFolder = "templates"

/** The folders of the output that carry the paper's style sheets and typefaces; the site has its own, see `site/assets.ts`. */
const withAssets = ["print", "press"]

/** Style sheets, scripts and typefaces copied, once, beside the office's list and the documents to print. */
export function copyAssets(staging: string): void {
  for (const place of withAssets) {
    if (existsSync(join(staging, place, "assets"))) continue
    cpSync(join(templatesFolder, "assets"), join(staging, place, "assets"), { recursive: true })
    cpSync(join(templatesFolder, "fonts"), join(staging, place, "assets", "fonts"), { recursive: true })
  }
}
