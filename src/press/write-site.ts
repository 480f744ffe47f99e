import Eleventy from "@11ty/eleventy"
import type { BuildRequest } from "./request.ts"

/** Lets Eleventy write everything a request asks for into its staging folder: site, office's list, documents to print. */
export async function writeSite(request: BuildRequest): Promise<void> {
  const eleventy = new Eleventy("templates", request.staging, {
    configPath: ".eleventy.js",
    quietMode: true,
    config: (eleventyConfig) => eleventyConfig.addGlobalData("request", request),
  })
  eleventy.disableLogger()
  await eleventy.write()
}
