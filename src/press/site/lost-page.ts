import { readFileSync, writeFileSync } from "node:fs"
import { join } from "node:path"
import { invariant } from "../../kernels/fault.ts"
import { siteAssets } from "./assets.ts"
import { contentPolicy, headerFiles, type Inline } from "./policy.ts"

/**
 * The page for an address that leads nowhere stands by itself: a host shows it at any depth, so what it needs is put into it.
 * The header files go beside it, since they name its sums.
 */
export function writeLostPage(staging: string): void {
  const place = join(staging, "site", "404.html")
  const inline = { style: textOf("site.css"), script: textOf("find.js") }
  writeFileSync(place, standingAlone(readFileSync(place, "utf8"), inline))
  for (const [name, text] of Object.entries(headerFiles(inline)))
    writeFileSync(join(staging, "site", name), text)
}

/** A page with its style sheet and its script put into it, and a policy that lets these two pass. */
export function standingAlone(html: string, inline: Inline): string {
  const link = /<link rel="stylesheet" href="[^"]*">/
  const script = /<script src="[^"]*" defer><\/script>/
  const policy = inMarkup(contentPolicy())
  invariant(
    link.test(html) && script.test(html) && html.includes(policy),
    "the page for lost addresses has another form",
  )
  return html
    .replace(policy, () => inMarkup(contentPolicy(inline)))
    .replace(link, () => `<style>${inline.style}</style>`)
    .replace(script, "")
    .replace("</body>", () => `<script>${inline.script}</script>\n</body>`)
}

/** As the templates write it into an attribute. */
function inMarkup(policy: string): string {
  return policy.replaceAll("'", "&#39;")
}

function textOf(name: string): string {
  const asset = siteAssets().find((each) => each.name === name)
  invariant(asset, `the site has no ${name}`)
  return new TextDecoder().decode(asset.bytes)
}
