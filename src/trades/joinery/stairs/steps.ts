import { mmText } from "../../../kernels/units.ts"
import type { Stair } from "../../../survey/room.ts"
import type { Caution, Step, Task } from "../../trade.ts"
import type { JoineryInputs } from "../inputs.ts"

/** The stairs that come up to a room with an open edge that this room's work has to open. */
export function openEdges({ room, job, input }: Task<JoineryInputs>): Stair[] {
  return job.house.stairs.filter(
    (stair) =>
      stair.toRoom === room.id &&
      stair.openEdge > 0 &&
      (input.nosing !== undefined || input.stairs.some((each) => each.stair === stair.id)),
  )
}

/** Guarding off and back at each open edge, a hold point; then the parts of the stairs. */
export function stairSteps(task: Task<JoineryInputs>): Step[] {
  const { room, job, input } = task
  const base = { trade: "joinery", room: room.id, stage: "nosings", noisy: true, dusty: true } as const
  const guarding = openEdges(task).map(
    (stair): Step => ({
      ...base,
      key: guardingKey(room.id, stair.id),
      title: `Guarding off at ${stair.id}: open edge`,
      detail: `${mmText(stair.openEdge)} mm of open edge while it is off: barrier across edge and stair head first, nobody else on the storey, nothing left lying at the edge; guarding back the same day.`,
      hours: job.rules.value("joinery-stair-out-guarding"),
      after: [],
      hold: "barrier up before the guarding comes off; guarding back and tried by hand before the barrier goes",
    }),
  )
  const parts = input.stairs.flatMap(({ stair, parts }): Step[] => {
    const count = parts.reduce((sum, part) => sum + part.lengths.length, 0)
    if (count === 0) return []
    return [
      {
        ...base,
        key: `joinery/${room.id}/stair-${stair}`,
        title: `Fit parts of stair ${stair}`,
        detail: `${parts.map((part) => `${part.lengths.length} ${part.what}`).join(", ")}; rises taped as fitted and written on the stair sheet.`,
        hours: count * job.rules.value("joinery-stair-out-part"),
        after: guarding.map((step) => step.key),
        hold: "finished rises taped, and as on the stair sheet",
      },
    ]
  })
  return [...guarding, ...parts]
}

/** Key of the step that opens an edge. */
export function guardingKey(room: string, stair: string): string {
  return `joinery/${room}/guarding-${stair}`
}

/** What can hurt at a stair without its guarding. */
export function stairCautions(edges: readonly Stair[]): Caution[] {
  return edges.length === 0
    ? []
    : [
        {
          trade: "joinery",
          id: "open-edge",
          text: "Guarding off is an open edge: barrier first, one at a time, nobody below.",
          why: "A fall of a storey height kills.",
          defer: "Work at height as the site's own plan says; guarding by building control's rules.",
        },
      ]
}
