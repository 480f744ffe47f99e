import type { Block, Row, SheetModel } from "../../kernels/paper.ts"
import { fixed } from "../../kernels/units.ts"
import { type DryingProcessId, dryingHours, dryingProcesses, dryingRests } from "../../rulebook/drying.ts"
import type { Rules } from "../../rulebook/rules.ts"
import { onPaper } from "../rests.ts"
import type { Task } from "../trade.ts"
import { wholeHours } from "./gates.ts"
import type { DecoratingInputs } from "./inputs.ts"
import { roomPaint } from "./room-paint.ts"

/** Air that the board has a column for, °C, and humidities it has a table for, %. */
const temperatures = [8, 12, 16, 20, 24]
const humidities = [60, 80]
/** Hours above which the board counts in days. */
const inDaysFrom = 72
const hoursInDay = 24

/** The drying and cure board of a room: earliest next step by the thermometer, with boxes to write in. */
export function dryingBoard(task: Task<DecoratingInputs>): SheetModel {
  const { room } = task
  const processes = processesIn(task)
  return {
    kind: "drying",
    title: "Drying and cure",
    purpose: "Read the thermometer and the hygrometer; this is the earliest the next step may start.",
    room: room.id,
    trade: "decorating",
    audience: ["trade", "office"],
    hosted: true,
    orientation: "portrait",
    datum: null,
    blocks: [
      {
        kind: "warning",
        caption: "Where it says do not",
        items: ["Do not start in that air at all. Warm, dry or air the room first."],
      },
      ...humidities.map((humidity) => boardTable(processes, humidity, task.job.rules)),
      startedTable(processes),
      {
        kind: "text",
        as: "note",
        paragraphs: [
          "Round the humidity read up and the temperature read down. Hours are elapsed hours, nights and Sundays included, in moving air; half as long again in a closed, still room.",
          "The touch or reading named ends the wait, never the hours alone. The maker's instructions go first.",
        ],
      },
      { kind: "sign", roles: ["Read by", "Foreman"] },
    ],
    rests: boardRests(processes),
  }
}

/** Entries behind the board's hours and its "do not". */
function boardRests(processes: DryingProcessId[]): string[] {
  const all = [...new Set(processes.flatMap(dryingRests))]
  return [...onPaper(all), ...all.filter((id) => /-(coldest|dampest|hottest)$/.test(id))]
}

/** Processes that go on in this room, in the order they come. */
export function processesIn(task: Task<DecoratingInputs>): DryingProcessId[] {
  const { input, facts } = task
  const { lines } = roomPaint(task)
  const found: DryingProcessId[] = []
  if ([input.walls, input.ceiling, input.slopes].includes("new-plaster") && !input.plasterDry)
    found.push("skim")
  found.push("filler", ...lines.map((line) => line.process), "caulk")
  if (facts.floorFinish === "tile" || (facts.tiledWall ?? 0) > 0)
    found.push("tile-adhesive", "grout", "grout-wet", "sealant")
  if (facts.floorFinish === "oak") found.push("oil", "oil-walk", "oil-full")
  return [...new Set(found)]
}

function boardTable(processes: DryingProcessId[], humidity: number, rules: Rules): Block {
  return {
    kind: "table",
    caption: `Earliest next step in air up to ${humidity} %`,
    columns: [
      { label: "What was put on", width: 2.6 },
      { label: "Before", width: 2.4 },
      ...temperatures.map((temperature) => ({
        label: `${temperature} °C`,
        as: "figure" as const,
        width: 1.5,
      })),
    ],
    rows: processes.map((id): Row => {
      const { what, next } = dryingProcesses[id]
      const hours = temperatures.map((temperature) =>
        timeText(dryingHours(id, { temperature, humidity }, rules)),
      )
      return { cells: [what, next, ...hours] }
    }),
  }
}

/** Hours for the board, rounded up: whole hours, or days and halves of days where long. */
export function timeText(hours: number | "do not"): string {
  if (hours === "do not") return "do not"
  if (hours < 1) return `${wholeHours(hours * 60)} min`
  if (hours < inDaysFrom) return `${wholeHours(hours)} h`
  const days = Math.ceil(Number(((hours / hoursInDay) * 2).toPrecision(9))) / 2
  return `${fixed(days, Number.isInteger(days) ? 0 : 1)} days`
}

function startedTable(processes: DryingProcessId[]): Block {
  return {
    kind: "table",
    caption: "Started, and may go on from",
    columns: [
      { label: "What was put on", width: 2.4 },
      { label: "Until then, no", width: 2.2 },
      { label: "Ends when", width: 3 },
      { label: "Started, date and hour", as: "write", width: 2 },
      { label: "°C / %", as: "write", width: 1.2 },
      { label: "May go on from", as: "write", width: 2 },
    ],
    rows: processes.map((id): Row => {
      const { what, next, until, forbids } = dryingProcesses[id]
      return {
        cells: [
          `${what}, before ${next}`,
          forbids.map((each) => forbidWords[each]).join(", "),
          until,
          "",
          "",
          "",
        ],
      }
    }),
  }
}

const forbidWords: Record<string, string> = {
  walk: "walking on it",
  load: "load",
  coat: "coat over it",
  close: "closing the door",
  wet: "water",
}
