import type { Finding } from "../../kernels/finding.ts"
import type { SheetModel } from "../../kernels/paper.ts"
import type { House, Room } from "../../survey/room.ts"
import { type JobFacts, noWork, type Step, type Work } from "../trade.ts"

type InRoom = { room: Room; work: Work }

/**
 * Across the house: every alarm sounded together once all rooms with one are closed up, and storeys without any named.
 * Where the alarms stand goes into the results, so that sheets and programme can say which are covered when.
 */
export async function electricsAcross(
  job: JobFacts,
  rooms: InRoom[],
): Promise<{ work: Work; sheets: SheetModel[] }> {
  const alarmed = rooms.filter(({ work }) => alarmsIn(work) > 0)
  if (alarmed.length === 0) return { work: noWork(), sheets: [] }
  const steps = [together(job, alarmed)]
  const results = { alarms: alarmed.map(({ room, work }) => ({ room: room.id, count: alarmsIn(work) })) }
  const findings = withoutAlarm(job.house, alarmed)
  return { work: { ...noWork(), steps, results, findings, rests: ["elec-out-alarms"] }, sheets: [] }
}

/** Alarms among the points of a room's results. */
function alarmsIn(work: Work): number {
  const points = (work.results.points ?? []) as { kind: string }[]
  return points.filter(({ kind }) => kind.endsWith("alarm")).length
}

function together(job: JobFacts, alarmed: readonly InRoom[]): Step {
  const highest = alarmed.reduce((top, each) => (each.room.storey.deck > top.room.storey.deck ? each : top))
  const storeys = [...new Set(alarmed.map(({ room }) => room.storey.name))]
  return {
    key: "electrics/house/alarms-together",
    trade: "electrics",
    room: highest.room.id,
    title: "Sound all alarms together",
    detail: `One button after the other, in ${alarmed.map(({ room }) => room.id).join(", ")}: each sets off every other, heard in every bedroom with its door shut (${storeys.join(", ")}). Battery standby tried with the supply off.`,
    stage: "covers-off",
    hours: job.rules.value("elec-out-alarms"),
    after: alarmed.map(({ room }) => `electrics/${room.id}/close-up`),
    hold: "Every alarm on every storey sounds with all others; none is covered; date written on the sheet.",
    noisy: false,
    dusty: false,
  }
}

/** Storeys with a room to sleep, sit or cook in, or a landing, and no alarm anywhere (BS 5839-6, from memory: one at least on each). */
function withoutAlarm({ storeys, rooms, stairs }: House, alarmed: readonly InRoom[]): Finding[] {
  if (stairs.length === 0) return []
  const used = new Set(
    rooms
      .filter(({ use }) => ["bedroom", "living", "kitchen", "study", "landing", "hall"].includes(use))
      .map((room) => room.storey.id),
  )
  return storeys
    .filter(({ id }) => used.has(id) && !alarmed.some(({ room }) => room.storey.id === id))
    .map(({ id, name }) => ({
      code: "storey-without-alarm",
      severity: "warning",
      at: { file: "house.yaml", path: ["storeys", storeys.findIndex((each) => each.id === id)] },
      message: `${name} has no smoke alarm: guidance asks for one on every storey, all linked.`,
      mend: "Add a smoke-alarm point on its landing or hall, or write the one that stays (is: stays).",
    }))
}
