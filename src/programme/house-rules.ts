import type { Room } from "../survey/room.ts"
import { stageRank, stages } from "../trades/stages.ts"
import type { Step } from "../trades/trade.ts"

/**
 * What each step waits for: its own list, every step of the next earlier stage that its room has, and the rules that go
 * across rooms (common practice): the oil goes from the far rooms to the landing, nosings and stairs come last, a step of
 * the whole house waits for all rooms at earlier stages and later stages of all rooms wait for it.
 * @returns keys waited for, by key; unknown keys are kept out (the trade has then no such step in this job)
 */
export function waitsFor(steps: readonly Step[], rooms: readonly Room[]): Map<string, string[]> {
  const known = new Set(steps.map((step) => step.key))
  const landings = new Set(rooms.filter((room) => room.use === "landing").map((room) => room.id))
  const storeyOf = new Map(rooms.map((room) => [room.id, room.storey.id]))
  const byRoom = groups(steps, (step) => step.room ?? "")
  const waits = new Map<string, string[]>()
  for (const step of steps) {
    const before = new Set(step.after.filter((key) => known.has(key)))
    for (const other of earlierStage(step, byRoom.get(step.room ?? "") ?? [])) before.add(other.key)
    if (step.room && landings.has(step.room) && (step.stage === "oil" || step.stage === "nosings")) {
      for (const other of steps) {
        if (
          other.stage === "oil" &&
          other.room &&
          !landings.has(other.room) &&
          storeyOf.get(other.room) === storeyOf.get(step.room)
        ) {
          before.add(other.key)
        }
      }
    }
    waits.set(
      step.key,
      [...before].filter((key) => key !== step.key),
    )
  }
  return waits
}

/** The steps of the nearest earlier stage that these steps have. */
function earlierStage(step: Step, same: readonly Step[]): Step[] {
  for (let rank = stageRank(step.stage) - 1; rank >= 0; rank--) {
    const found = same.filter((other) => other.stage === stages[rank])
    if (found.length > 0) return found
  }
  return []
}

function groups<T>(list: readonly T[], key: (item: T) => string): Map<string, T[]> {
  const found = new Map<string, T[]>()
  for (const item of list) found.set(key(item), [...(found.get(key(item)) ?? []), item])
  return found
}
