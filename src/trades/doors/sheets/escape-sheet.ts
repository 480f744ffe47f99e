import type { Drawing, Shape } from "../../../kernels/drawing/shapes.ts"
import type { Block, SheetModel } from "../../../kernels/paper.ts"
import { mmText } from "../../../kernels/units.ts"
import type { Caution, JobFacts } from "../../trade.ts"
import type { Escape } from "../escape/escape.ts"
import { metresText } from "../escape/storeys.ts"
import { outside } from "../escape/ways.ts"
import type { HungDoor } from "../hanging/hung-door.ts"
import { leafText } from "../hanging/leaf.ts"
import { escapePlans } from "./escape-plans.ts"

interface EscapeCase {
  doors: readonly HungDoor[]
  escape: Escape
  job: JobFacts
  cautions: readonly Caution[]
  rests: readonly string[]
}

/** The escape route on one sheet: heights, the way out, doors on the stair, what else encloses it, questions. */
export function escapeSheet({ doors, escape: wayOut, job, cautions, rests }: EscapeCase): SheetModel {
  const { heights, enclosure, questions } = wayOut
  const onStair = doors.filter((hung) => hung.ask.onStair || hung.ask.minutes > 0)
  return {
    kind: "escape-route",
    title: "Escape route",
    purpose:
      "How high the floors lie, the way out, and what guidance asks of the doors and of what encloses the stair.",
    room: null,
    trade: "doors",
    audience: ["trade", "office"],
    hosted: true,
    orientation: "portrait",
    datum: "Heights of finished floors above the lowest ground beside the house",
    blocks: [
      ...warnings(wayOut),
      { kind: "text", as: "lead", paragraphs: [leadText(wayOut, job)] },
      {
        kind: "drawing",
        drawing: sectionDrawing(wayOut, job),
        caption: "Finished floors above the lowest ground, and the limits",
        maxHeight: 90,
        scale: 100,
      },
      ...escapePlans(job.house, wayOut),
      {
        kind: "table",
        caption: "Storeys",
        columns: [
          { label: "Storey" },
          { label: "Finished floor above lowest ground, mm", as: "figure" },
          { label: "Counts as a storey to escape from" },
        ],
        rows: [...heights.storeys].reverse().map(({ storey, height, used }) => ({
          cells: [storey.name, mmText(height), used ? "yes" : "no: stores only"],
        })),
      },
      {
        kind: "table",
        caption: "Doors onto the stair enclosure and to a garage",
        columns: [
          { label: "Door", as: "mark", width: 2 },
          { label: "Guidance's minimum", width: 5 },
          { label: "What we hang", width: 6 },
          { label: "Why", width: 10 },
        ],
        rows: onStair.map(({ door, ask, leaf, work }) => ({
          cells: [door.id, ask.minimumText, leafText(leaf, door, work), ask.why],
        })),
        note: "Doors that do not open onto the stair enclosure are not asked to resist fire; the door schedule lists them all.",
      },
      ...(enclosure.length > 0
        ? [
            {
              kind: "table" as const,
              caption: "What else encloses the stair",
              columns: [
                { label: "At", as: "mark" as const, width: 2 },
                { label: "What", width: 6 },
                { label: "To do or ask", width: 9 },
                { label: "Seen", as: "tick" as const },
              ],
              rows: enclosure.map((item) => ({ cells: [item.where, item.what, item.do, ""] })),
            },
          ]
        : []),
      ...(questions.length > 0
        ? [
            {
              kind: "checks" as const,
              caption: "Questions for building control, before leaves are ordered",
              items: questions.map((text) => ({ text, write: "answer, date, name" })),
            },
          ]
        : []),
      { kind: "cautions", items: cautions.filter((each) => each.id === "door-guidance") },
      { kind: "sign", roles: ["Foreman", "Building control"] },
    ],
    rests: [...rests],
  }
}

function warnings({ findings }: Escape): Block[] {
  if (findings.length === 0) return []
  const items = findings.map((finding) => `${finding.message} ${finding.mend ?? ""}`.trim())
  return [{ kind: "warning", caption: "Ask before work begins", items }]
}

function leadText({ heights, route }: Escape, job: JobFacts): string {
  const { top, asks } = heights
  const limit = metresText(job.rules.value("door-escape-storey-limit"))
  const name = (id: string) => job.house.rooms.find((room) => room.id === id)?.name ?? id
  const way =
    route.route?.map((step) => (step.to === outside ? `out by door ${step.id}` : name(step.to))) ?? []
  const asked = {
    open: `not over ${limit}: no protected stair is asked by height`,
    protected: `over ${limit}: the stair is to be enclosed down to the final exit`,
    more: `over ${metresText(job.rules.value("door-escape-upper-limit"))}: more than a protected stair is asked`,
  }[asks]
  const walk = way.length > 0 ? ` The way out from its stair: ${way.join(", ")}.` : ""
  return `The finished floor of ${top.storey.name} lies ${metresText(top.height)} above the lowest ground, ${asked}.${walk}`
}

/** Width of the section and reach of its lines, real mm. */
const sectionWidth = 4000
const beyond = 600

function sectionDrawing({ heights }: Escape, job: JobFacts): Drawing {
  const limits = ["door-escape-storey-limit", "door-escape-upper-limit"].map((id) => job.rules.value(id))
  const top = heights.top.height
  const floors = heights.storeys.flatMap(({ storey, height }): Shape[] => [
    { kind: "line", from: { x: 0, y: height }, to: { x: sectionWidth, y: height }, stroke: { width: 0.7 } },
    {
      kind: "text",
      at: { x: sectionWidth / 2, y: height + 340 },
      text: `${storey.name} ${metresText(height)}`,
      height: 3,
    },
  ])
  const limitLines = limits
    .filter((limit) => limit <= Math.max(top, limits[0]!) + 2 * sectionWidth)
    .flatMap((limit): Shape[] => [
      {
        kind: "line",
        from: { x: -beyond, y: limit },
        to: { x: sectionWidth + beyond, y: limit },
        stroke: { width: 0.35, dash: "dashed" },
      },
      {
        kind: "text",
        at: { x: sectionWidth + beyond + 100, y: limit },
        text: `limit ${metresText(limit)}`,
        height: 2.5,
        anchor: "start",
      },
    ])
  return {
    title: "Heights of floors",
    description: `Section with ${heights.storeys.length} floors above the lowest ground and the limits of ${limits.map(metresText).join(" and ")}.`,
    shapes: [
      {
        kind: "line",
        from: { x: -2 * beyond, y: 0 },
        to: { x: sectionWidth + 2 * beyond, y: 0 },
        stroke: { width: 0.7 },
      },
      { kind: "text", at: { x: -beyond, y: -250 }, text: "lowest ground", height: 2.5 },
      { kind: "line", from: { x: 0, y: 0 }, to: { x: 0, y: top }, stroke: { width: 0.5 } },
      {
        kind: "line",
        from: { x: sectionWidth, y: 0 },
        to: { x: sectionWidth, y: top },
        stroke: { width: 0.5 },
      },
      ...floors,
      ...limitLines,
      { kind: "dimension", from: { x: 0, y: 0 }, to: { x: 0, y: top }, offset: 14, text: mmText(top) },
      { kind: "scale-bar" },
    ],
  }
}
