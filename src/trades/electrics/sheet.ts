import type { Block, SheetModel } from "../../kernels/paper.ts"
import { mmText } from "../../kernels/units.ts"
import { datumText } from "../datum.ts"
import { finishedFloor } from "../finished-floor.ts"
import { onPaper } from "../rests.ts"
import type { Task, Work } from "../trade.ts"
import { wallRows } from "../wall-points.ts"
import { ceilingPlan } from "./ceiling-plan.ts"
import type { ElectricsInputs } from "./inputs.ts"
import { pointWords, type ScheduledPoint, scheduledPoints } from "./points.ts"

/** The points schedule of one room, with its walls, visits and boxes for test papers. */
export function electricsSheets(task: Task<ElectricsInputs>, work: Work): SheetModel[] {
  const points = scheduledPoints(task)
  if (points.length === 0) return []
  const { room } = task
  return [
    {
      kind: "electrics",
      title: "Electrics",
      purpose: "Where each point goes, and what is tested.",
      room: room.id,
      trade: "electrics",
      audience: ["trade", "office"],
      hosted: true,
      orientation: "portrait",
      datum: datumText(room, "finished-floor"),
      blocks: [
        {
          kind: "warning",
          caption: "Heights",
          items: [
            `From the finished floor, which lies ${mmText(finishedFloor(task))} mm over the level the room was measured from.`,
          ],
        },
        schedule(task, points),
        ...drawings(task, points),
        ...overhead(task, points),
        { kind: "checks", caption: "Visits", items: visitChecks(points) },
        {
          kind: "boxes",
          caption: "Test papers",
          labels: [
            "Certificate number",
            "Notice to building control",
            "Alarms tested, date",
            "Supply on again, by whom",
          ],
        },
        { kind: "cautions", items: work.cautions },
        { kind: "sign", roles: ["Electrician", "Foreman"] },
      ],
      rests: onPaper(work.rests),
    },
  ]
}

function schedule(task: Task<ElectricsInputs>, points: ScheduledPoint[]): Block {
  const { rules } = task.job
  const alarm = rules.value("elec-alarm-from-wall")
  const hasZones = points.some(({ zone }) => zone !== null)
  const zones = hasZones
    ? ` Zones: 1 over bath or tray, 2 up to ${rules.value("elec-wet-zone-two")} beside it, both up to ${mmText(rules.value("elec-wet-zone-height"))} over the finished floor or the shower’s outlet if that is higher; a shower without a tray is otherwise: the electrician decides.`
    : ""
  return {
    kind: "table",
    caption: "Points schedule",
    columns: [
      { label: "No.", as: "figure", width: 0.6 },
      { label: "Wall", as: "figure", width: 0.7 },
      { label: "Point", width: 1.9 },
      { label: "On", width: 1 },
      { label: "From left", as: "figure", width: 1.1 },
      { label: "Over finished floor", as: "figure", width: 1.3 },
      { label: "Over measured level", as: "figure", width: 1.3 },
      { label: "Off wall", as: "figure", width: 1 },
      ...(hasZones ? [{ label: "Zone", width: 1.5 }] : []),
      { label: "Serves", width: 2 },
      { label: "Box", as: "tick", width: 0.7 },
      { label: "Fitted", as: "tick", width: 0.9 },
    ],
    rows: points.map(({ number, point, height, fromDatum, byRule, zone }) => ({
      cells: [
        String(number),
        String(point.wall),
        `${point.gang > 1 ? `${point.gang}-gang ` : ""}${pointWords[point.kind]}${point.is === "new" ? "" : ` (${point.is})`}`,
        point.on,
        mmText(point.fromLeft),
        height === null ? "" : `${mmText(height)}${byRule ? "*" : ""}`,
        fromDatum === null ? "" : mmText(fromDatum),
        point.off === undefined ? "" : mmText(point.off),
        ...(hasZones ? [zone ?? ""] : []),
        point.note ?? "",
        "",
        "",
      ],
    })),
    note: `Centre of the plate, mm, seen from inside. * by rule: agree before cutting boxes in. Ceiling alarms at least ${alarm} from walls and lights, as their maker says.${zones}`,
  }
}

function drawings(task: Task<ElectricsInputs>, points: ScheduledPoint[]): Block[] {
  const walls = task.room.walls
    .map((wall) => ({
      wall,
      marks: points
        .filter((each) => each.point.wall === wall.number && each.height !== null)
        .map(({ number, point, height }) => ({
          text: String(number),
          fromLeft: point.fromLeft,
          height: height!,
        })),
    }))
    .filter(({ marks }) => marks.length > 0)
  return wallRows({ room: task.room, floor: finishedFloor(task), walls }).map(({ drawing, caption }) => ({
    kind: "drawing",
    drawing,
    caption: `${caption}; numbers are those of the schedule`,
    maxHeight: 70,
  }))
}

/** Points on ceiling and slopes from above, where there are any, with baths and showers. */
function overhead(task: Task<ElectricsInputs>, points: ScheduledPoint[]): Block[] {
  const drawing = ceilingPlan(task, points)
  const caption = "Ceiling and slopes from above, walls numbered; numbers are those of the schedule"
  return drawing ? [{ kind: "drawing", drawing, caption, maxHeight: 70 }] : []
}

function visitChecks(points: ScheduledPoint[]): { text: string; write?: string }[] {
  const alarms = points.some(({ point }) => point.kind.endsWith("alarm"))
  return [
    { text: "1 Before the first coat: boxes at height, ends safe, boxes masked", write: "date" },
    { text: "2 Fit: points fitted and tested", write: "date" },
    { text: "3 Ease: plates eased with the supply off, back when dry", write: "date" },
    { text: "4 Close up: plates level, supply on, tests written down", write: "date" },
    ...(alarms ? [{ text: "Alarms uncovered and all sounding together", write: "date" }] : []),
  ]
}
