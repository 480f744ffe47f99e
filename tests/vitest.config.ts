import { defineConfig } from "vitest/config"

/** Tests live under `tests/`, in the same tree as `src/`. */
export default defineConfig({
  test: {
    root: new URL("..", import.meta.url).pathname,
    include: ["tests/**/*.test.ts"],
    testTimeout: 60_000,
    hookTimeout: 120_000,
    maxWorkers: 2,
    // Files share their imports: loading them anew for each file took a third of the whole run.
    isolate: false,
  },
})
