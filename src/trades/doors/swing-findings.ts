import type { Finding } from "../../kernels/finding.ts"
import { mmText } from "../../kernels/units.ts"
import type { DoorInWall, Room } from "../../survey/room.ts"
import type { JobFacts } from "../trade.ts"
import { doorAt } from "./door-findings.ts"
import { floorLevel } from "./floors.ts"
import type { HungDoor } from "./hanging/hung-door.ts"
import { besideHinge, leavesMeet, type Swing, sweepUnderSlopes, swingOf } from "./hanging/swing.ts"
import { atDoor } from "./messages.ts"
import type { RulesRead } from "./rules-read.ts"

/** What a swinging leaf meets: a slope over its top corner, the wall beside its hinges, another leaf of the room. */
export function swingFindings(hung: HungDoor, job: JobFacts, rules: RulesRead): Finding[] {
  const { door, home, here, work, fitted } = hung
  if (!here || !door.hinges || door.swingsInto !== home.id || !work.swept) return []
  const swing = swingOf(here, home, door.hinges)
  if (!swing) return []
  const at = doorAt(door.id, job)
  return [
    ...(fitted ? underSlope(hung, swing, job, rules) : []),
    ...beside(hung, here, door.hinges, rules, job),
    ...others(home, door.id)
      .filter((other) => leavesMeet(swing, other.swing))
      .map(({ id }) =>
        atDoor(
          "door-leaves-meet",
          at,
          `Doors ${door.id} and ${id} swing into the same part of ${home.name} (${home.id}) and can meet.`,
          "Change a hand or a swing, or fit stops so that the leaves do not strike.",
          "note",
        ),
      ),
  ]
}

function underSlope(hung: HungDoor, swing: Swing, job: JobFacts, rules: RulesRead): Finding[] {
  const { door, home, fitted, floors } = hung
  if (!fitted) return []
  const sweep = sweepUnderSlopes({ ...swing, width: fitted.size.width }, home)
  if (!sweep) return []
  const top = floors.highest + fitted.up[0]!.undercut + fitted.size.height
  const ceiling = roomDatum(home, job) + sweep.ceiling
  const clear = rules.value("door-sweep-clear")
  if (ceiling - top >= clear) return []
  return [
    atDoor(
      "door-swings-under-slope",
      doorAt(door.id, job),
      `Door ${door.id}: its top corner comes to ${mmText(ceiling - top)} mm under the slope at ${sweep.at} degrees open; ${mmText(clear)} mm is the least.`,
      "Change the hand or the swing, lower the head, or move the doorway; a fire-resisting leaf is not cut to a rake.",
    ),
  ]
}

/** The level that heights in a room were taped from, mm above the ground floor's finished level. */
function roomDatum(room: Room, job: JobFacts): number {
  switch (room.measured.heightsFrom) {
    case "deck":
      return room.storey.deck
    case "old-floor":
      return room.storey.deck + room.storey.finishNow
    case "finished-floor":
      return floorLevel(room, job.passed)
    case "ground":
      return job.house.lowestGround
  }
}

function beside(
  hung: HungDoor,
  here: DoorInWall,
  hinges: "left" | "right",
  rules: RulesRead,
  job: JobFacts,
): Finding[] {
  const wall = hung.home.walls.find((each) => each.number === here.wall)
  if (!wall) return []
  const free = besideHinge(here, wall, hinges)
  const handle = rules.value("door-handle-projection")
  if (free >= handle) return []
  return [
    atDoor(
      "door-handle-meets-wall",
      doorAt(hung.door.id, job),
      `Door ${hung.door.id}: ${mmText(free)} mm beside its hinges, so the handle (${mmText(handle)} mm) meets the wall before the leaf stands at 90 degrees.`,
      "Fit a stop for the leaf, and count the handle when the clear opening matters.",
      "note",
    ),
  ]
}

function others(room: Room, id: string): { id: string; swing: Swing }[] {
  return room.doors.flatMap((here) => {
    const { door } = here
    if (door.id <= id || door.swingsInto !== room.id || !door.hinges) return []
    const swing = swingOf(here, room, door.hinges)
    return swing ? [{ id: door.id, swing }] : []
  })
}
