import { describe, expect, it } from "vitest"
import { ConflictAnalysis } from "../../../../src/kernels/schedule/exact/conflict.ts"
import { Propagation } from "../../../../src/kernels/schedule/exact/propagation.ts"
import { compiled } from "../../../../src/kernels/schedule/problem.ts"
import { seeded } from "../../../../src/kernels/schedule/seeded.ts"
import { bruteShortest, smallProject } from "../brute-force.ts"

/** Makes choices by chance until a conflict comes, and returns what it teaches. */
function firstLesson(seed: number, latestEnd: number) {
  const project = compiled(smallProject(seed))
  const propagation = new Propagation(project, 0, latestEnd)
  if (propagation.hopeless || propagation.propagateAll()) return null
  const chance = seeded(seed)
  const { value } = propagation.trail
  for (let step = 0; step < 200; step++) {
    const key = Math.floor(chance() * 2 * project.count)
    if (value[key]! + value[key ^ 1]! === 0) continue
    propagation.choose(key, value[key]! + 1)
    const conflict = propagation.propagate()
    if (!conflict) continue
    const lesson = new ConflictAnalysis(propagation, () => {}).lesson(conflict)
    return { lesson, propagation, project }
  }
  return null
}

describe("what a conflict teaches", () => {
  it("a clause that is false where the search stands, and asserts its first bound one step back", () => {
    let lessons = 0
    for (let seed = 0; seed < 200; seed++) {
      const shortest = bruteShortest(smallProject(seed))
      const found = firstLesson(seed, shortest)
      if (!found?.lesson) continue
      lessons++
      const { lesson, propagation } = found
      const { trail } = propagation
      for (const literal of lesson.literals) expect(trail.isFalse(literal)).toBe(true)
      propagation.backTo(lesson.level)
      const [first = 0, ...others] = lesson.literals
      expect(trail.isFalse(first)).toBe(false)
      for (const literal of others) expect(trail.isFalse(literal)).toBe(true)
    }
    expect(lessons).toBeGreaterThan(50)
  })
})
