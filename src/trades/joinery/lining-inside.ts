import type { Mm } from "../../kernels/units.ts"
import type { DoorInWall, Room } from "../../survey/room.ts"
import type { JobFacts } from "../trade.ts"

/** Inside of a lining: width between its legs, and height over the finished floor of one room, mm. */
export interface LiningInside {
  width: Mm
  height: Mm
}

/**
 * The inside of a doorway's lining as seen from one room: what the trade that hangs doors passes on (from the other room, set right by
 * the two floors' build-ups), else as measured; of a stud opening linings and packing are taken off.
 */
export function liningInside(here: DoorInWall, room: Room, job: JobFacts): LiningInside {
  const own = job.passed.get(room.id)?.linings?.[here.door.id]
  if (own) return own
  for (const other of here.door.between) {
    const lining = job.passed.get(other)?.linings?.[here.door.id]
    if (lining) {
      const drop = buildUp(other, job) - buildUp(room.id, job)
      return { width: lining.width, height: lining.height + drop }
    }
  }
  return measuredInside(here, room, job)
}

/** Thickness of a room's floor over its deck, mm: as passed on, else what lies there now. */
export function buildUp(room: string, job: JobFacts): Mm {
  const surveyed = job.house.rooms.find((each) => each.id === room)
  return job.passed.get(room)?.floorBuildUp ?? surveyed?.storey.finishNow ?? 0
}

function measuredInside(here: DoorInWall, room: Room, job: JobFacts): LiningInside {
  const { door } = here
  const isInside = door.lengthsTo === "lining"
  const lining = job.rules.value("joinery-lining-thickness")
  const packing = job.rules.value("joinery-lining-packing")
  const sides = isInside ? 0 : 2 * lining + packing
  const head = isInside ? 0 : lining + packing / 2
  return { width: here.width - sides, height: here.height - head - floorOverDatum(here, room, job) }
}

/** How far the finished floor stands over what the door's height was taped from, mm. */
function floorOverDatum({ door }: DoorInWall, room: Room, job: JobFacts): Mm {
  const now = buildUp(room.id, job)
  switch (door.heightsFrom) {
    case "deck":
      return now
    case "old-floor":
      return now - room.storey.finishNow
    case "finished-floor":
      return 0
    case "ground":
      return room.storey.deck + now - job.house.lowestGround
  }
}
