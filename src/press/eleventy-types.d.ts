/** The parts of Eleventy that the build uses; it ships no types of its own. */
declare module "@11ty/eleventy" {
  export interface EleventyConfig {
    globalData: Record<string, unknown>
    addGlobalData(name: string, data: unknown): void
    addNunjucksFilter(name: string, filter: (...args: never[]) => unknown): void
    addPassthroughCopy(paths: Record<string, string>): void
    addWatchTarget(path: string): void
    on(event: string, listener: (given: { results?: { outputPath: string }[] }) => unknown): void
    setInputDirectory(path: string): void
    setIncludesDirectory(path: string): void
    setLayoutsDirectory(path: string): void
    setOutputDirectory(path: string): void
    setTemplateFormats(formats: string[]): void
    setServerOptions(options: Record<string, unknown>): void
    setQuietMode(quiet: boolean): void
    setUseGitIgnore(use: boolean): void
    setNunjucksEnvironmentOptions(options: Record<string, unknown>): void
  }

  export interface EleventyOptions {
    configPath?: string
    quietMode?: boolean
    runMode?: "build" | "serve" | "watch"
    config?(eleventyConfig: EleventyConfig): void
  }

  export default class Eleventy {
    constructor(input?: string, output?: string, options?: EleventyOptions)
    write(): Promise<unknown>
    disableLogger(): void
    init(): Promise<void>
    watch(): Promise<void>
    serve(port?: number): Promise<void>
  }
}
