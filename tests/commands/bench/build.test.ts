import { expect, it } from "vitest"
import { benchBuild } from "../../../src/commands/bench/build.ts"

const oneRoom = {
  ref: "garden-room",
  changed: { file: "rooms/g1.yaml", find: "fromLeft: 1350", put: "fromLeft: 1400" },
}

/** Two whole builds and a printing more: `BUILT=1` runs it. */
const whole = process.env.BUILT === "1"

it.runIf(whole)(
  "tells the seconds of a build from nothing, of its floor, and of builds after a change and after none",
  {
    timeout: 240_000,
  },
  async () => {
    const lines: string[] = []
    const env = { ...process.env, STOREY_ROD_BROWSER: "packaged" }
    const {
      cold,
      floor,
      oneRoom: changed,
      same,
    } = await benchBuild({ ...oneRoom, env, print: (line) => lines.push(line) })
    expect(Math.min(cold, floor, changed, same)).toBeGreaterThan(0)
    expect(lines).toEqual([
      expect.stringContaining(`garden-room: built from nothing in ${cold.toFixed(1)} s`),
    ])
  },
)

it("wants a browser, and a change that changes something", async () => {
  const quiet = { print: () => {} }
  const none = { ...process.env, STOREY_ROD_BROWSER: "/no browser" }
  await expect(benchBuild({ ...oneRoom, env: none, ...quiet })).rejects.toThrow("/no browser")
  const nothing = { ...oneRoom, changed: { ...oneRoom.changed, find: "fromLeft: 999999" } }
  await expect(benchBuild({ ...nothing, env: none, ...quiet })).rejects.toThrow("holds nothing to change")
})
