import { clockAt, type Instant, instantText } from "../../kernels/calendar/instant.ts"
import { fixed } from "../../kernels/units.ts"
import { compared } from "../../programme/compare.ts"
import { gapDays } from "../../programme/gap.ts"
import type { SetJob } from "../set-job.ts"
import { jsonText } from "./plain.ts"

/** `job.json`: every computed result of a job, machine-readable, keys sorted. */
export function jobJson({ ref, result, sheets, revision }: SetJob): string {
  const { programme, orders, house } = result
  const zone = programme.zone
  return jsonText({
    ref,
    code: result.job.code,
    title: result.job.title,
    revision: revision.letter,
    house: { lowestGround: house.lowestGround, storeys: house.storeys, stairs: house.stairs },
    rooms: house.rooms.map((room) => ({
      id: room.id,
      name: room.name,
      storey: room.storey.id,
      outline: room.outline,
      area: room.area,
      floorArea: room.floorArea,
      perimeter: room.perimeter,
      wallGross: room.wallGross,
      wallNet: room.wallNet,
      ceiling: {
        ...room.ceiling,
        parts: room.ceiling.parts.map(({ kind, wall, pitch, area }) => ({ kind, wall, pitch, area })),
      },
      trust: room.trust,
      walls: room.walls.map(({ doors, windows, ...wall }) => ({
        ...wall,
        doors: doors.map((door) => door.door.id),
        windows: windows.map((window) => window.id),
      })),
    })),
    trades: result.results.map(({ trade, room, work }) => ({
      trade,
      room: room?.id ?? null,
      pieces: work.pieces,
      quantities: work.quantities,
      cautions: work.cautions.map((caution) => caution.id),
      rests: [...work.rests].sort(),
      results: work.results,
    })),
    programme: {
      start: programme.start,
      finish: programme.finish,
      bound: { ...programme.bound, gapWorkingDays: gapDays(programme) },
      firstNight: programme.firstNight,
      moves: programme.moves,
      movedSince: movedSince(result),
      visits: programme.visits,
      steps: programme.steps.map(({ step, crew, people, start, finish, ready, latest, ...each }) => ({
        key: step.key,
        title: step.title,
        room: step.room,
        trade: step.trade,
        stage: step.stage,
        hours: step.hours,
        crew,
        people,
        start: instantText(start, zone),
        finish: instantText(finish, zone),
        ready: instantText(ready, zone),
        latest: instantText(latest, zone),
        floatHours: Number(fixed(each.float, 2)),
        heldBy: each.heldBy,
        behind: each.behind,
        because: each.because,
        doneBy: each.doneBy ?? null,
      })),
      labour: programme.labour,
    },
    orders: {
      lines: orders.lines.map(({ product, ...line }) => ({ product: product.id, ...line })),
      cutLists: orders.cutLists.map(({ product, plan }) => ({ product: product.id, plan })),
    },
    deliveries: result.deliveries.drops.map(({ lines, ...drop }) => ({
      ...drop,
      products: lines.map((line) => line.product.id),
    })),
    price: result.price,
    variations: (result.account?.changes ?? []).map(({ variation, before, after }) => ({
      id: variation.id,
      what: variation.what,
      accepted: variation.accepted ?? null,
      declined: variation.declined ?? null,
      price: before.price && after?.price ? after.price.gross.minus(before.price.gross) : null,
      finishBefore: before.programme.finish,
      finishAfter: after?.programme.finish ?? null,
    })),
    findings: result.findings.map(({ code, severity, at, message }) => ({ code, severity, at, message })),
    sheets: sheets.map(({ number, kind, title, room, trade, audience, hosted }) => ({
      number,
      kind,
      title,
      room,
      trade,
      audience,
      hosted,
    })),
  })
}

/** What moved since the last issue with other days; null before there is one. */
function movedSince({ issuedBefore, programme, programmeFile }: SetJob["result"]) {
  if (!issuedBefore) return null
  const { revision, on } = issuedBefore
  return { revision, on, ...compared(issuedBefore.programme, programme, programmeFile.progress) }
}

/** Day and time of an instant by the site's clock, for records. */
export function siteClock(instant: Instant, zone: string): { date: string; time: string } {
  return clockAt(instant, zone)
}
