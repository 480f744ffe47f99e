import type { Finding } from "../../kernels/finding.ts"
import type { SheetModel } from "../../kernels/paper.ts"
import type { Room } from "../../survey/room.ts"
import { type JobFacts, noWork, type Work } from "../trade.ts"
import { doorCautions } from "./cautions.ts"
import { doorAt } from "./door-findings.ts"
import { enclosureSteps } from "./enclosure-steps.ts"
import type { HungDoor } from "./hanging/hung-door.ts"
import { atDoor } from "./messages.ts"
import { scheduleRow } from "./results.ts"
import { rulesRead } from "./rules-read.ts"
import { escapeSheet } from "./sheets/escape-sheet.ts"
import { recordSheet } from "./sheets/record-sheet.ts"
import { scheduleSheet } from "./sheets/schedule-sheet.ts"
import { doorsOfHouse } from "./work.ts"

/** The whole house: door schedule, escape route, record of fire doors; findings that no single room owns. */
export async function doorsAcross(
  job: JobFacts,
  rooms: { room: Room; work: Work }[],
): Promise<{ work: Work; sheets: SheetModel[] }> {
  const rules = rulesRead(job.rules)
  const { doors, escape: wayOut } = doorsOfHouse(job, rules)
  const quantities = rooms.flatMap(({ work }) => work.quantities)
  const cautions = doorCautions(doors, job.house.occupied, rules)
  const findings = [...wayOut.findings, ...notTaken(job, doors, rooms), ...unevenHandles(job, doors)]
  const steps = enclosureSteps(job.house, wayOut, rules)
  const scheduled = [...rules.ids(), ...wayOut.rests]
  const rests = [...new Set(scheduled)]
  const sheets = [
    escapeSheet({ doors, escape: wayOut, job, cautions, rests: wayOut.rests }),
    scheduleSheet({ doors, quantities, job, cautions, rests }),
    ...recordSheet({ doors, rests: recordRests(rests) }),
  ]
  const results = {
    doorSchedule: doors.map(scheduleRow),
    escape: {
      storeys: wayOut.heights.storeys.map(({ storey, height, used }) => ({
        storey: storey.id,
        height,
        used,
      })),
      asks: wayOut.heights.asks,
      stairway: [...wayOut.route.stairway].sort(),
      route: wayOut.route.route?.map((way) => way.id) ?? [],
      questions: wayOut.questions,
    },
  }
  return { work: { ...noWork(), steps, findings, cautions, results, rests }, sheets }
}

/** The rules that the pass limits of the record rest on: gaps and thresholds. */
function recordRests(rests: readonly string[]): string[] {
  return rests.filter((id) => /^door-(fire-)?(gap|threshold|smoke-threshold|foot|carpet|air)/.test(id))
}

function notTaken(job: JobFacts, doors: readonly HungDoor[], rooms: { room: Room }[]): Finding[] {
  const taken = new Set(rooms.map(({ room }) => room.id))
  return doors
    .filter((hung) => hung.work.hang !== "stays" && !taken.has(hung.home.id))
    .map((hung) =>
      atDoor(
        "door-in-no-room",
        doorAt(hung.door.id, job),
        `Door ${hung.door.id} is to be hung but belongs to ${hung.home.name} (${hung.home.id}), where no work on doors is written.`,
        "Write `doors: {}` under work of that room.",
      ),
    )
}

function unevenHandles(job: JobFacts, doors: readonly HungDoor[]): Finding[] {
  const storeys = new Map<string, HungDoor>()
  return doors.flatMap((hung) => {
    if (!hung.fitted) return []
    const first = storeys.get(hung.home.storey.id)
    if (!first?.fitted) {
      storeys.set(hung.home.storey.id, hung)
      return []
    }
    if (first.fitted.latch.height === hung.fitted.latch.height) return []
    return [
      atDoor(
        "door-handles-differ",
        doorAt(hung.door.id, job),
        `Door ${hung.door.id} has its spindle at ${hung.fitted.latch.height} mm, door ${first.door.id} of the same storey at ${first.fitted.latch.height} mm.`,
        "Use one height for a storey.",
        "note",
      ),
    ]
  })
}
