import type { Block, SheetModel } from "../../kernels/paper.ts"
import { fixed, mmText, squareMetres } from "../../kernels/units.ts"
import { datumText } from "../datum.ts"
import type { Task, Work } from "../trade.ts"
import type { FloorInputs } from "./inputs.ts"
import { lengthOf } from "./layout/boards.ts"
import { packRun } from "./layout/packs.ts"
import { type FloorPlan, floorAreas, planFloor } from "./plan-floor.ts"
import { limitText, type ReadingLimit } from "./readings.ts"
import { firstLines, rowDrawing } from "./row-drawing.ts"
import { type GoesTo, leftOver, rowTable } from "./row-table.ts"
import type { FloorLayout } from "./rows.ts"
import { laidChecks, notThrough, underChecks } from "./sheet-checks.ts"
import { buildUpUndercut, packsText } from "./steps.ts"

/** Lines for readings of each kind, taken or still to be taken; one is blank in any case. */
const blankReadings = 2

/** The floor sheet of one room; none where no floor is laid. */
export function floorSheets(task: Task<FloorInputs>, work: Work): SheetModel[] {
  if (task.input.finish !== "floating-board") return []
  const { plan } = planFloor(task)
  if (!plan) return []
  const { room } = task
  return [
    {
      kind: "floor",
      title: "Floor",
      purpose: "Lay the floor row by row: where to begin, which piece comes next, what must be dry and free.",
      room: room.id,
      trade: "floors",
      audience: ["trade", "office"],
      hosted: true,
      orientation: "portrait",
      datum: datumText(room),
      blocks: blocksOf(task, plan, work),
      rests: work.rests,
    },
  ]
}

function blocksOf(task: Task<FloorInputs>, plan: FloorPlan, work: Work): Block[] {
  const warnings = work.findings.filter((finding) => finding.severity !== "note")
  return [
    keyFigures(task, plan),
    ...(warnings.length > 0
      ? [
          {
            kind: "warning" as const,
            caption: "Settle before work begins",
            items: warnings.map((finding) => [finding.message, finding.mend].filter(Boolean).join(" ")),
          },
        ]
      : []),
    {
      kind: "drawing",
      drawing: rowDrawing(task.room, plan),
      caption: `Rows from wall ${plan.direction.wall.number}, left and right as one faces it; grey pieces come from offcuts; strike the chain line first`,
      maxHeight: 150,
    },
    { kind: "list", caption: "Where to begin", items: beginning(task, plan) },
    rowTable(plan, goesTo(task, plan)),
    { kind: "text", paragraphs: boardsText(task, plan), as: "plain" },
    readingsTable(task, plan),
    { kind: "checks", caption: "Under the floor, before boards", items: underChecks(task, plan) },
    ...screwTable(plan),
    { kind: "list", caption: "Do not fix through the floor", items: notThrough(task) },
    { kind: "checks", caption: "When laid", items: laidChecks(task, plan) },
    { kind: "cautions", items: work.cautions },
    { kind: "sign", roles: ["Floor layer", "Foreman"] },
  ]
}

function keyFigures(task: Task<FloorInputs>, plan: FloorPlan): Block {
  const { layout, movement } = plan
  const { laid } = floorAreas(plan)
  const first = layout.rows[0]!.runs[0]!
  return {
    kind: "figures",
    items: [
      { label: "Covered", value: fixed(laid, 2), unit: "m²" },
      { label: "Boards", value: String(layout.boards) },
      { label: "Packs to bring in", value: String(plan.packs) },
      { label: "Rows", value: String(layout.rows.length) },
      { label: "First row", value: mmText(Math.max(first.widths.left, first.widths.right)), unit: "mm" },
      { label: "Gap all round", value: mmText(movement.gap), unit: "mm" },
      { label: "Build-up", value: fixed(plan.buildUp, Number.isInteger(plan.buildUp) ? 0 : 1), unit: "mm" },
      { label: "Undercut linings", value: fixed(buildUpUndercut(task, plan), 0), unit: "mm" },
    ],
  }
}

function beginning(task: Task<FloorInputs>, plan: FloorPlan): string[] {
  const [first, ...further] = firstLines(plan)
  const { from, left, right } = first!
  const wall = plan.direction.wall.number
  const doorways = plan.area.doorways.map(
    (end) =>
      `Doorway ${end.door} in wall ${end.wall}: floor ends ${mmText(end.depth)} mm behind the wall's face, less the gap, under a profile.`,
  )
  const cupboards = plan.area.runsInto.map((hole) => `Runs through into: ${hole.name}.`)
  return [
    `Boards run ${plan.direction.why}.`,
    `Strike a line ${mmText(from)} mm from wall ${wall}, from ${mmText(left)} to ${mmText(right)} mm along it: the far edge of row 1 (gap ${mmText(plan.movement.gap)} and what row 1 is wide there). Row 1 lies to the line, not to the wall.`,
    ...further.map(
      (line) =>
        `Beyond the break strike another line ${mmText(line.from)} mm from wall ${wall}: the far edge of row ${line.row}.`,
    ),
    ...breakTexts(plan),
    "Face the wall of row 1; lay each row left to right, row after row away from it, groove towards that wall, tongue away.",
    ...broughtText(plan),
    ...(plan.looseTongue > 0
      ? [
          `Rows inside the doorway of wall ${wall} are laid after row 1 along the wall, back out of the room: ${fixed(plan.looseTongue / 1000, 2)} m of loose tongue, glued.`,
        ]
      : []),
    openText(task, plan),
    ...doorways,
    ...cupboards,
  ]
}

/** Offcuts of this room that a later room takes, by their mark. */
function goesTo({ job, room }: Task<FloorInputs>, { layout }: FloorPlan): GoesTo {
  const found = new Map<string, string>()
  for (const [other, { floorBoards }] of job.passed)
    for (const { mark } of layout.offcuts)
      if (floorBoards?.brought.includes(`${room.id} ${mark}`)) found.set(mark, other)
  return found
}

function openText({ job }: Task<FloorInputs>, plan: FloorPlan): string {
  const most = job.rules.value("floor-mixed-packs")
  const { mix } = plan.board
  const lengths = mix
    ? ` Each holds ${mix.map(({ length, perPack }) => `${perPack} of ${mmText(length)}`).join(", ")}: sort them by length.`
    : ""
  const hasEarlier = plan.taken.reduce((sum, count) => sum + count, 0) > plan.layout.boards
  const open =
    plan.packs > 0
      ? `Open ${packsText(Math.min(most, plan.packs))} and mix${hasEarlier ? ", also with what is left of the room before" : ""}; compare batch numbers first.`
      : "Lay from the packs that rooms before opened; compare batch numbers first."
  return open + lengths
}

function breakTexts({ breaks, movement, profile }: FloorPlan): string[] {
  const cover = profile ? profile.name : "a profile"
  return breaks.map(
    ({ number, wall, fromLeft, length }) =>
      `Break ${number}: strike a line square to wall ${wall}, ${mmText(fromLeft)} mm from its left end, ${mmText(length)} mm long. Boards end ${mmText(movement.gap)} mm short of it on both sides; no board, tongue or glue across it. Over it ${cover}, fixed to the deck in the gap, never to the boards.`,
  )
}

function broughtText({ layout }: FloorPlan): string[] {
  if (layout.brought.length === 0) return []
  const marks = layout.brought.map((offcut) => `${offcut.mark} (${mmText(lengthOf(offcut))})`)
  return [`Bring the offcuts marked ${marks.join(", ")}.`]
}

function boardsText(task: Task<FloorInputs>, plan: FloorPlan): string[] {
  const { layout, movement } = plan
  const { rules } = task.job
  const { laid } = floorAreas(plan)
  const taken = squareMetres(layout.areas.bought + layout.areas.brought)
  const thumb = rules.value("floor-waste-rule-of-thumb")
  const spare = rules.value("floor-spare-packs")
  return [
    `${boardsCount(plan)}; ${fixed((taken / laid - 1) * 100, 1)} % over the covered area (by the ${thumb} % rule: ${thumbText(plan, laid * (1 + thumb / 100))}). ${provenText(layout)} ${spare} pack${spare === 1 ? " is" : "s are"} ordered to spare for the whole job, of the same batch.`,
    `Left over at the end: ${leftOver(layout, goesTo(task, plan))}.`,
    `Moisture of the boards ${movement.wasRead ? "as read" : "expected when laid"} ${fixed(movement.laidAt, 1)} %, in service ${fixed(movement.driest, 1)} to ${fixed(movement.dampest, 1)} %: across ${mmText(movement.across)} mm the floor may grow ${fixed(movement.growth, 1)} and shrink ${fixed(movement.shrinkage, 1)} mm in all, at ${fixed(movement.share * 100, 0)} % of solid oak's movement${movement.shareByMaker ? " (maker's figure)" : ""}. Gap by rule ${mmText(movement.byRule)}, by calculation ${mmText(movement.byCalculation)}; a skirting must cover ${fixed(movement.widest, 1)} mm.`,
  ]
}

function boardsCount({ board, layout }: FloorPlan): string {
  const brought =
    layout.brought.length > 0
      ? ` and ${layout.brought.length} offcut${layout.brought.length === 1 ? "" : "s"} of other rooms`
      : ""
  const { mix } = board
  if (!mix) return `${layout.boards} boards of ${mmText(board.length)} × ${mmText(board.width)}${brought}`
  const counts = mix.map(
    ({ length }) => `${layout.lengths.filter((own) => own === length).length} of ${mmText(length)}`,
  )
  return `${layout.boards} boards ${mmText(board.width)} wide, ${counts.join(", ")}${brought}: ${layout.packs} packs`
}

function thumbText({ board }: FloorPlan, area: number): string {
  const { mix } = board
  if (!mix) return `${Math.ceil(area / squareMetres(board.width * board.length))} boards`
  return `${Math.ceil(area / squareMetres(board.width * packRun(mix)))} packs`
}

function provenText({ boards, packs, bound }: FloorLayout): string {
  const count = packs ?? boards
  return count === bound
    ? "For rows set so, that is proven fewest."
    : `No plan for rows set so takes fewer than ${bound}; whether fewer than ${count} can do is not proven.`
}

function readingsTable(_task: Task<FloorInputs>, plan: FloorPlan): Block {
  const taken = plan.readings.map((reading) => ({
    cells: [
      reading.limit.label,
      limitText(reading.limit),
      reading.on,
      `${reading.value} ${reading.limit.unit}`,
      [reading.instrument, reading.place].filter(Boolean).join(", "),
      reading.isWithin ? "within" : "OUT",
    ],
    ...(reading.isWithin ? {} : { as: "hold" as const }),
  }))
  const blank = plan.limits.flatMap((limit) =>
    Array.from({ length: blankLines(plan, limit) }, () => ({
      cells: [limit.label, limitText(limit), "", "", "", ""],
    })),
  )
  return {
    kind: "table",
    caption: "Readings",
    columns: [
      { label: "What", width: 2 },
      { label: "Limit", width: 1.6 },
      { label: "Date", as: "write", width: 1.4 },
      { label: "Reading", as: "write", width: 1.4 },
      { label: "Instrument, place", as: "write", width: 2.4 },
      { label: "In limits", as: "write", width: 1 },
    ],
    rows: [...taken, ...blank],
    note: "Out of limits: stop, heat and ventilate, read again. Boards stay closed outside the room until then.",
  }
}

function blankLines({ readings }: FloorPlan, limit: ReadingLimit): number {
  return Math.max(1, blankReadings - readings.filter((reading) => reading.limit === limit).length)
}

function screwTable({ deck }: FloorPlan): Block[] {
  if (!deck || deck.joists.length === 0) return []
  return [
    {
      kind: "table",
      caption: `Screws by joist, ${deck.is === "boards" ? `boards about ${mmText(deck.boardWidth)} wide` : "sheets"}`,
      columns: [
        { label: "Joist", as: "mark" },
        { label: `From wall ${deck.along}`, as: "figure" },
        { label: "Deck over it", as: "figure" },
        { label: "Screws", as: "figure" },
        { label: "Done", as: "tick" },
      ],
      rows: deck.joists.map((joist, index) => ({
        cells: [String(index + 1), mmText(joist.from), mmText(joist.length), String(joist.screws), ""],
      })),
      note: "Find each joist by its nails; the figures are where it should be.",
    },
  ]
}
