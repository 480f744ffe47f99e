import { expect, it } from "vitest"
import { seeded } from "../../../src/kernels/schedule/seeded.ts"
import { reachable } from "../../../src/programme/verify/reach.ts"
import { waysOf } from "../../../src/programme/ways.ts"
import { generatedTask } from "../generated.ts"

it("two ways of finding out what can be reached agree, whatever is shut", () => {
  const next = seeded(5)
  for (let seed = 1; seed <= 60; seed++) {
    const { site } = generatedTask(seeded(seed))
    const ways = waysOf(site)
    const shut = new Set(site.rooms.filter(() => next() < 0.3).map((room) => room.id))
    const open = reachable(site, shut)
    for (const { id } of site.rooms) expect(open.has(id), `site ${seed} ${id}`).toBe(ways.reached(id, shut))
  }
})
