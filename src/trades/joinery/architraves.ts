import { type Mm, roundHalfUp } from "../../kernels/units.ts"
import type { Room } from "../../survey/room.ts"
import type { JobFacts, Piece } from "../trade.ts"
import { type LiningInside, liningInside } from "./lining-inside.ts"
import type { Stop } from "./runs.ts"

/** The architraves of one doorway on the face of one room. */
export interface SetOfArchitraves extends Stop {
  door: string
  inside: LiningInside
}

/** What architraves are cut from. */
export interface ArchitraveTask {
  room: Room
  product: string
  width: Mm
  job: JobFacts
  /** Height of the plinth blocks that the legs stand on, mm; 0 without. */
  plinth?: Mm
}

const mitre = { as: "internal-mitre", setting: 45 } as const
const square = { as: "square", setting: 0 } as const

/**
 * The architrave sets of a room: every lined doorway on this face, with the outer edges of its legs along the wall, where the
 * skirting stops.
 */
export function architraveSets({
  room,
  width,
  job,
}: Omit<ArchitraveTask, "product" | "plinth">): SetOfArchitraves[] {
  const beyond = job.rules.value("joinery-architrave-margin") + width
  return room.doors
    .filter(({ door }) => door.lining !== "none")
    .map((here) => {
      const inside = liningInside(here, room, job)
      const middle = here.fromLeft + here.width / 2
      return {
        door: here.door.id,
        wall: here.wall,
        inside,
        outerFrom: middle - inside.width / 2 - beyond,
        outerTo: middle + inside.width / 2 + beyond,
      }
    })
}

/** Legs and head of each set, long points, mitred at the head (computed from lining, margin and width). */
export function architravePieces(sets: readonly SetOfArchitraves[], task: ArchitraveTask): Piece[] {
  const margin = task.job.rules.value("joinery-architrave-margin")
  return sets.flatMap(({ door, wall, inside }): Piece[] => {
    const base = { trade: "joinery", room: task.room.id, wall, product: task.product, mayBeJointed: false }
    const leg = roundHalfUp(inside.height + margin + task.width - (task.plinth ?? 0), 1)
    const head = roundHalfUp(inside.width + 2 * (margin + task.width), 1)
    const mark = `${task.room.id}-${wall}-${door}`
    return [
      {
        ...base,
        mark: `${mark}L`,
        what: `architrave, left leg, ${door}`,
        length: leg,
        shortPoint: leg - task.width,
        left: square,
        right: mitre,
      },
      {
        ...base,
        mark: `${mark}H`,
        what: `architrave, head, ${door}`,
        length: head,
        shortPoint: head - 2 * task.width,
        left: mitre,
        right: mitre,
      },
      {
        ...base,
        mark: `${mark}R`,
        what: `architrave, right leg, ${door}`,
        length: leg,
        shortPoint: leg - task.width,
        left: mitre,
        right: square,
      },
    ]
  })
}
