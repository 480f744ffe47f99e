import type { SiteData } from "./site-data.ts"

/** What a command hands to Eleventy: everything the templates are given, and the folder to write into. */
export interface BuildRequest {
  /** The templates' data; asked for at every build, so that a preview sees what changed. */
  site(): Promise<SiteData>
  /** Folder that everything is written into. */
  staging: string
}
