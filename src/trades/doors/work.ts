import type { JobFacts, Task, Work } from "../trade.ts"
import { doorCautions } from "./cautions.ts"
import { doorFindings } from "./door-findings.ts"
import { type Escape, escapeOf } from "./escape/escape.ts"
import { homeOf } from "./floors.ts"
import { type HungDoor, hungDoor } from "./hanging/hung-door.ts"
import type { DoorsInputs } from "./inputs.ts"
import { doorQuantities, liningPieces } from "./materials.ts"
import { doorResult } from "./results.ts"
import { type RulesRead, rulesRead } from "./rules-read.ts"
import { doorSteps } from "./steps.ts"
import { swingFindings } from "./swing-findings.ts"

/** Doors of one room: those that belong to it, hung; pieces, quantities, steps, cautions, findings. */
export function doorsWork(task: Task<DoorsInputs>): Work {
  const { job } = task
  const rules = rulesRead(job.rules)
  const doors = doorsOfRoom(task, rules)
  return {
    pieces: doors.flatMap((hung) => liningPieces(hung, job)),
    quantities: doors.flatMap((hung) => doorQuantities(hung, job, rules)),
    steps: doors.flatMap((hung) => doorSteps(hung, rules)),
    cautions: doorCautions(doors, job.house.occupied, rules),
    findings: doors.flatMap((hung) => [
      ...doorFindings(hung, job, rules),
      ...swingFindings(hung, job, rules),
    ]),
    results: { doors: Object.fromEntries(doors.map((hung) => [hung.door.id, doorResult(hung)])) },
    rests: rules.ids(),
  }
}

/** The doorways that belong to one room, worked out, in the order of house.yaml. */
export function doorsOfRoom(
  { job, room }: Pick<Task<DoorsInputs>, "job" | "room">,
  rules: RulesRead,
): HungDoor[] {
  return doorsOfHouse(job, rules, (home) => home === room.id).doors
}

/** Every doorway of the house worked out, in the order of house.yaml, with the escape route. A doorway that joins no surveyed room is left out. The rules noted are those of the wanted doors; the escape route tells its own. */
export function doorsOfHouse(
  job: JobFacts,
  rules: RulesRead,
  isWanted: (home: string) => boolean = () => true,
): { doors: HungDoor[]; escape: Escape } {
  const wayOut = escapeOf(job, rulesRead(job.rules))
  const doors = job.house.doors.flatMap((door) => {
    const home = job.house.rooms.find((room) => room.id === homeOf(door, job.house))
    const ask = wayOut.asks.get(door.id)
    if (!home || !ask || !isWanted(home.id)) return []
    for (const id of ask.rests) rules.value(id)
    return [hungDoor(door, home, { job, ask, rules })]
  })
  return { doors, escape: wayOut }
}
