import { dateText } from "../kernels/calendar/date-text.ts"
import type { Block, Row, SheetModel } from "../kernels/paper.ts"
import { fixed, type Mm, mmText, squareMetres } from "../kernels/units.ts"
import { roomPlan } from "../survey/drawings/room-plan.ts"
import { type UnfoldedRow, unfoldedWalls } from "../survey/drawings/unfolded.ts"
import type { Room, ShapeTrust } from "../survey/room.ts"
import { floorAboveDatum } from "../survey/room-from.ts"
import { datumText } from "../trades/datum.ts"
import { hasWork } from "./glance.ts"
import type { JobResult } from "./job-result.ts"
import { headroomLabel } from "./words.ts"

/** Zero of heights on a drawing, by the room's datum. */
const zero: Record<Room["measured"]["heightsFrom"], string> = {
  deck: "deck",
  "finished-floor": "finished floor",
  "old-floor": "old floor",
  ground: "ground",
}

/** A room as measured: every wall unfolded, openings, slopes, corners, how the figures agree, readings, photos, what is hidden. */
export function surveySheet(result: JobResult, room: Room): SheetModel {
  const buildUp = result.passed.get(room.id)?.floorBuildUp ?? room.storey.finishNow
  const floor = floorAboveDatum(room, room.storey, buildUp)
  const rows = unfoldedWalls(room, { floor, datum: zero[room.measured.heightsFrom], rules: result.rules })
  return {
    kind: "survey",
    title: "The room as measured",
    purpose: "Every wall seen from inside, and how far the measurements can be trusted.",
    room: room.id,
    trade: null,
    audience: hasWork(result, room) ? ["trade", "office"] : ["office"],
    hosted: true,
    orientation: "portrait",
    datum: datumText(room),
    blocks: [
      sizes(result, room, buildUp),
      {
        kind: "drawing",
        drawing: roomPlan(room, { floorBuildUp: buildUp, rules: result.rules, joists: true }),
        caption:
          "Dotted: where slopes begin. Dashed: 1.5 m over the finished floor. Hatched: nothing may be fixed.",
        maxHeight: 118,
      },
      hidden(room),
      ...rows.map(elevations),
      ...openings(room),
      ...slopes(room),
      wallsAndCorners(room),
      ...checks(room),
      ...found(room),
    ],
    rests: [
      "survey-assumed-turn",
      "survey-measured-turn",
      "survey-shape-looseness",
      ...(room.section ? ["survey-pitch"] : []),
      ...(room.hidden.length > 0 ? ["survey-no-fix-half-width", "survey-no-fix-depth"] : []),
    ],
  }
}

function sizes(result: JobResult, room: Room, buildUp: Mm): Block {
  const [least, most] = [Math.min(...room.ceiling.heights), Math.max(...room.ceiling.heights)]
  const items = [
    { label: "Floor inside the walls", value: fixed(room.area, 2), unit: "m²" },
    { label: "Level ceiling", value: fixed(room.ceiling.flatArea, 2), unit: "m²" },
    {
      label: least < most ? "Its height as taped" : "Its height",
      value: least < most ? `${mmText(least)}–${mmText(most)}` : mmText(most),
      unit: "mm",
    },
    { label: "Walls, gross", value: fixed(room.wallGross, 2), unit: "m²" },
    { label: "Walls, openings out", value: fixed(room.wallNet, 2), unit: "m²" },
    { label: "Air", value: fixed(room.volume, 1), unit: "m³" },
  ]
  const sloping = [
    { label: "Slopes, windows out", value: fixed(room.ceiling.slopeNet, 2), unit: "m²" },
    ...["survey-headroom-low", "survey-headroom-full"].map((id) => {
      const height = result.rules.value(id)
      return { label: headroomLabel(height), value: fixed(room.headroom(height, buildUp), 2), unit: "m²" }
    }),
  ]
  return { kind: "figures", items: room.ceiling.slopeArea > 0 ? [...items, ...sloping] : items }
}

function elevations({ drawing, scale, walls }: UnfoldedRow): Block {
  const [first, last] = [walls[0], walls[walls.length - 1]]
  const which = first === last ? `Wall ${first}` : `Walls ${first} to ${last}`
  return {
    kind: "drawing",
    drawing,
    scale,
    caption: `${which} seen from inside. Chain line: finished floor. Dashed: headroom over it. Hatched: nothing may be fixed.`,
    maxHeight: 110,
  }
}

function openings(room: Room): Block[] {
  const doors = room.doors.map((door) => ({ ...door, id: door.door.id, sill: 0, kind: "door" }))
  const all = [...doors, ...room.windows]
  if (all.length === 0) return []
  return [
    {
      kind: "table",
      caption: "Openings",
      columns: [
        { label: "Id", as: "mark", width: 8 },
        { label: "What", width: 14 },
        { label: "Wall", as: "figure", width: 7 },
        { label: "From left mm", as: "figure", width: 12 },
        { label: "Width × height mm", as: "figure", width: 18 },
        { label: "Sill mm", as: "figure", width: 9 },
        { label: "Area m²", as: "figure", width: 9 },
        { label: "Reveal m × mm", as: "figure", width: 14 },
        { label: "Reveal m²", as: "figure", width: 10 },
      ],
      rows: all.map(({ id, kind, wall, fromLeft, width, height, sill }): Row => {
        const reveal = room.reveals.find((each) => each.opening === id)
        return {
          cells: [
            id,
            kind.replace("-", " "),
            String(wall),
            mmText(fromLeft),
            `${mmText(width)} × ${mmText(height)}`,
            mmText(sill),
            fixed(squareMetres(width * height), 2),
            reveal ? `${fixed(reveal.girth / 1000, 2)} × ${mmText(reveal.depth)}` : "–",
            reveal ? fixed(reveal.area, 2) : "–",
          ],
        }
      }),
      note: "A roof window's height and sill are taken up the slope from its dwarf wall. Reveal: length round it by depth.",
    },
  ]
}

function slopes(room: Room): Block[] {
  const parts = room.ceiling.parts.filter((part) => part.kind !== "flat" || room.ceiling.slopeArea > 0)
  const obstacles = room.ceiling.obstacles.map(
    ({ name, height }) => `${name}: underside at ${mmText(height)}`,
  )
  const list: Block[] =
    obstacles.length > 0 ? [{ kind: "list", caption: "Below the ceiling", items: obstacles }] : []
  if (parts.length === 0) return list
  return [
    {
      kind: "table",
      caption: "Ceiling, part by part",
      columns: [
        { label: "Part", width: 30 },
        { label: "Pitch", as: "figure", width: 14 },
        { label: "On the plan m²", as: "figure", width: 18 },
        { label: "True area m²", as: "figure", width: 18 },
        { label: "Windows out m²", as: "figure", width: 18 },
      ],
      rows: parts.map((part) => ({
        cells: [
          partName(part),
          part.kind === "slope" ? `${fixed(part.pitch, 1)}°` : "level",
          fixed(part.planArea, 2),
          fixed(part.area, 2),
          fixed(part.net, 2),
        ],
      })),
    },
    ...list,
  ]
}

function partName({ kind, wall }: Room["ceiling"]["parts"][number]): string {
  if (kind === "flat") return "Level ceiling"
  if (kind === "bulkhead") return "Underside of a bulkhead or beam"
  return kind === "slope" ? `Slope over wall ${wall}` : `Dormer in wall ${wall}`
}

/** Walls in order, each with the corner at its right end: as taped, as adjusted, and the angle for the saw. */
function wallsAndCorners(room: Room): Block {
  const { walls, trust } = room
  return {
    kind: "table",
    caption: "Walls and corners, as taped and as adjusted",
    columns: [
      { label: "Wall", as: "figure", width: 7 },
      { label: "Taped mm", as: "figure", width: 12 },
      { label: "Adjusted mm", as: "figure", width: 13 },
      { label: "Moved mm", as: "figure", width: 10 },
      { label: "Turn at its right end, as written", as: "figure", width: 15 },
      { label: "Turn adjusted", as: "figure", width: 13 },
      { label: "Corner there", width: 12 },
      { label: "True angle", as: "figure", width: 12 },
      { label: "Mitre each side", as: "figure", width: 12 },
    ],
    rows: walls.map(({ number, angleAtEnd }, index) => {
      const run = trust.residuals[index]
      const turn = trust.residuals[walls.length + index]
      return {
        cells: [
          String(number),
          run ? reading(run.taped, "mm") : "–",
          run ? reading(run.adjusted, "mm") : "–",
          run ? difference(run.residual, "mm") : "–",
          turn ? reading(turn.taped, "°") : "–",
          turn ? reading(turn.adjusted, "°") : "–",
          angleAtEnd < straight ? "inside" : "outside",
          `${fixed(angleAtEnd, 1)}°`,
          `${fixed(Math.abs(straight - angleAtEnd) / 2, 1)}°`,
        ],
      }
    }),
    note: "Turns to the right count as plus. The mitre is counted from a square cut; try it on two offcuts first.",
  }
}

/** Half a turn: a corner of this many degrees is none. */
const straight = 180

/** Diagonals and the section's figures; and what all of it says of the shape. */
function checks(room: Room): Block[] {
  const lines: ShapeTrust["residuals"] = [
    ...room.trust.residuals.slice(2 * room.walls.length),
    ...(room.section?.residuals ?? []),
  ]
  const { closure } = room.section ?? { closure: null }
  const section = closure === null ? "" : ` The section closes to ${reading(Math.abs(closure), "mm")} mm.`
  const words = `Taped by ${room.measured.by} on ${dateText(room.measured.on)}, tape ±${room.measured.tape} mm. With the turns as written the walk ends ${fixed(room.trust.closure, 1)} mm from its start.${section} ${fixedText(room.trust)}`
  if (lines.length === 0) return [{ kind: "text", as: "note", paragraphs: [words] }]
  return [
    {
      kind: "table",
      caption: "Check measurements",
      columns: [
        { label: "Measurement", width: 44 },
        { label: "As taped", as: "figure", width: 18 },
        { label: "As adjusted", as: "figure", width: 18 },
        { label: "Moved", as: "figure", width: 18 },
      ],
      rows: lines.map(({ what, taped, adjusted, residual, unit }) => ({
        cells: [
          `${what[0]!.toUpperCase()}${what.slice(1)}`,
          reading(taped, unit),
          reading(adjusted, unit),
          difference(residual, unit),
        ],
      })),
      note: words,
    },
  ]
}

function fixedText({ fixed: isFixed, needs }: ShapeTrust): string {
  if (isFixed) return "The shape is fixed."
  const lengths = needs.map(({ from, to }) => `from corner ${from} to corner ${to}`).join("; ")
  return `Shape not fixed: tape ${lengths || "more diagonals"}.`
}

function reading(value: number, unit: "mm" | "°"): string {
  const text = unit === "mm" ? fixed(value, 1) : `${fixed(value, 2)}°`
  return text.replace("-", "−")
}

function difference(value: number, unit: "mm" | "°"): string {
  const text = reading(Math.abs(value), unit)
  if (Number.parseFloat(text) === 0) return text
  return `${value < 0 ? "−" : "+"}${text}`
}

function found(room: Room): Block[] {
  const blocks: Block[] = []
  if (room.readings.length > 0) {
    blocks.push({
      kind: "table",
      caption: "Readings",
      columns: [
        { label: "Date", as: "figure", width: 20 },
        { label: "What", width: 22 },
        { label: "Reading", as: "figure", width: 16 },
        { label: "Instrument", width: 20 },
        { label: "Where", width: 24 },
      ],
      rows: room.readings.map(({ on, what, value, instrument, place }) => ({
        cells: [
          dateText(on),
          what.replace("-", " "),
          `${value}${what === "air-temperature" ? " °C" : " %"}`,
          instrument,
          place ?? "–",
        ],
      })),
    })
  }
  if (room.photos.length > 0) {
    blocks.push({
      kind: "list",
      caption: "Photos of the room as found",
      items: room.photos.map(({ number, of }) => `Photo ${number}: ${of}`),
    })
  }
  return blocks
}

function hidden(room: Room): Block {
  const joists = joistText(room)
  if (room.hidden.length === 0) {
    return {
      kind: "warning",
      caption: "Scan first",
      items: [
        "Nothing is known of pipes and cables in this room: scan floor and walls before fixing.",
        joists,
      ],
    }
  }
  const items = room.hidden.map(({ what, in: where, wall, fromLeft, to, note }) => {
    const until = to === undefined ? "" : ` to ${mmText(to)}`
    return `${what} in the ${where}, wall ${wall}, ${mmText(fromLeft)}${until} from its left end${note ? ` (${note})` : ""}`
  })
  return { kind: "warning", caption: "Hidden: nothing may be fixed there", items: [...items, joists] }
}

function joistText({ joists }: Room): string {
  if (!joists) return "Joists: direction not known here; scan first."
  const centres = joists.centres === undefined ? "centres not known" : `at ${mmText(joists.centres)} centres`
  const first = joists.firstFrom === undefined ? "" : `, the first ${mmText(joists.firstFrom)} from it`
  return `Joists run along wall ${joists.wall}, ${centres}${first}.`
}
