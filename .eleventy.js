import { register } from "tsx/esm/api"

register()
const { configureEleventy } = await import("./src/press/eleventy.ts")
const { standingRequest } = await import("./src/commands/standing-request.ts")

/**
 * The build: the jobs are loaded and worked out, once each; the sheets are set by the templates; the site is written.
 * The commands hand in their own request; started by itself, Eleventy builds the demo jobs into output/.
 */
export default async function (eleventyConfig) {
  eleventyConfig.globalData.request ??= await standingRequest()
  configureEleventy(eleventyConfig)
}
