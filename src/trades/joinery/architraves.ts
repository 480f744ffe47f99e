import type { Mm } from "../../kernels/units.ts"
import type { DoorInWall, Room } from "../../survey/room.ts"
import type { JobFacts, Piece } from "../trade.ts"

/** The architraves of one doorway on the face of one room. */
export interface SetOfArchitraves {
  door: string
  wall: number
  /** Inside of the lining: width between legs and height from the finished floor, mm. */
  inside: { width: Mm; height: Mm }
  /** Outer edges along the wall from its left end, mm: the skirting stops there. */
  outerFrom: Mm
  outerTo: Mm
}

/** What architraves are cut from. */
export interface ArchitraveTask {
  room: Room
  product: string
  width: Mm
  job: JobFacts
}

const mitre = { as: "internal-mitre", setting: 45 } as const
const square = { as: "square", setting: 0 } as const

/**
 * The architrave sets of a room: every lined doorway on this face. The lining's inside comes from the trade that hangs doors;
 * a doorway whose lining stays is measured between linings, a stud opening loses linings and packing.
 */
export function architraveSets({ room, width, job }: Omit<ArchitraveTask, "product">): SetOfArchitraves[] {
  const beyond = job.rules.value("joinery-architrave-margin") + width
  return room.doors
    .filter(({ door }) => door.lining !== "none")
    .map((here) => {
      const inside = insideOf(here, room, job)
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
    const leg = inside.height + margin + task.width
    const head = inside.width + 2 * (margin + task.width)
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

function insideOf(here: DoorInWall, room: Room, job: JobFacts): { width: Mm; height: Mm } {
  for (const facts of job.passed.values()) {
    const lining = facts.linings?.[here.door.id]
    if (lining) return lining
  }
  const { door } = here
  const lining = job.rules.value("joinery-lining-thickness")
  const packing = job.rules.value("joinery-lining-packing")
  const studs = door.lengthsTo === "lining" ? 0 : 2 * lining + packing
  const head = door.lengthsTo === "lining" ? 0 : lining + packing / 2
  const floor = door.heightsFrom === "deck" ? (job.passed.get(room.id)?.floorBuildUp ?? 0) : 0
  return { width: here.width - studs, height: here.height - head - floor }
}
