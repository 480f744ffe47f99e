import type { Job } from "../intake/job.ts"
import type { Finding } from "../kernels/finding.ts"
import type { Rules } from "../rulebook/rules.ts"
import type { House } from "./room.ts"
import { roomFrom } from "./room-from.ts"
import { storeyFindings, storeyPlans } from "./storey-plan.ts"

/** The house with every room's true geometry, and what its measurements cannot satisfy. Rooms stand in the order of the job. */
export function surveyHouse(
  job: Pick<Job, "house" | "rooms">,
  rules: Rules,
): { house: House; findings: Finding[] } {
  const { house } = job
  const rooms = job.rooms.flatMap((room) => {
    const storey = house.storeys.find((each) => each.id === room.storey)
    return storey ? [roomFrom(room, room.file, { storey, doors: house.doors, rules })] : []
  })
  return {
    house: {
      lowestGround: house.lowestGround,
      built: house.built,
      occupied: house.occupied,
      storeys: house.storeys,
      stairs: house.stairs,
      doors: house.doors,
      rooms,
    },
    findings: [
      ...rooms.flatMap((room) => room.findings),
      ...storeyPlans({ storeys: house.storeys, rooms }).flatMap((plan) => storeyFindings(plan, rules)),
    ],
  }
}
