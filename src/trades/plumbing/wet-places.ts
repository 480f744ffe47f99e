import type { RoomFacts, Task } from "../trade.ts"
import type { PlumbingInputs } from "./inputs.ts"

/** What plumbing passes on: where baths and showers stand; a shower without a depth is as deep as wide. */
export function wetPlaces({ input, job }: Task<PlumbingInputs>): RoomFacts {
  const places = input.sanitaryware.flatMap(({ kind, wall, fromLeft, width, depth }) => {
    if (kind !== "bath" && kind !== "shower") return []
    const deep = depth ?? (kind === "bath" ? job.rules.value("plumb-bath-depth") : width)
    return [{ what: kind, wall, fromLeft, width, depth: deep }]
  })
  return places.length > 0 ? { wetPlaces: places } : {}
}
