import type { Block, Column, SheetModel } from "../../../kernels/paper.ts"
import { fixed, mmText } from "../../../kernels/units.ts"
import type { Rules } from "../../../rulebook/rules.ts"
import { onPaper } from "../../rests.ts"
import type { Caution, Piece } from "../../trade.ts"
import { pieceTable } from "../piece-table.ts"
import { stairDrawing } from "./drawing.ts"
import { type Limit, limitsOf } from "./limits.ts"
import { pitchOf, type Rise, twiceRiseAndGoing } from "./rises.ts"
import type { StairSeen } from "./stair.ts"

/** What a stair's sheet is made of. */
export interface StairSheet {
  seen: StairSeen
  pieces: readonly Piece[]
  rules: Rules
  cautions: readonly Caution[]
}

/** The sheet of one stair: every rise before and after finishes, what guidance says of it, its parts, the open edge. */
export function stairSheet({ seen, pieces, rules, cautions }: StairSheet): SheetModel {
  const { stair } = seen
  const limits = limitsOf(seen, rules)
  const outside = limits.filter((limit) => !limit.within)
  return {
    kind: "stair",
    part: stair.id,
    title: `${stair.name}: rises and parts`,
    purpose: "Tape every rise before and after finishes; unequal rises trip people, so ask before going on.",
    room: null,
    trade: "joinery",
    audience: ["trade", "office"],
    hosted: true,
    orientation: "portrait",
    datum: "Rises from tread to tread; first from the floor below, last to the floor above. Millimetres.",
    blocks: [
      figures(seen),
      ...(outside.length > 0 ? [askFirst(outside, seen)] : []),
      {
        kind: "drawing",
        drawing: stairDrawing(seen),
        caption: `Finished steps in the heavy line, decks and bare treads broken; figures are finished rises${stair.winders > 0 ? "; winders drawn unwound" : ""}.`,
        maxHeight: drawingHeight,
      },
      riseTable(seen),
      limitTable(limits),
      ...(pieces.length > 0 ? [pieceTable(pieces, "Parts of the stair")] : []),
      checks(seen, rules),
      ...cautionBlock(cautions),
      { kind: "sign", roles: ["Joiner", "Foreman"] },
    ],
    rests: onPaper([
      ...limits.flatMap((limit) => limit.rests),
      "joinery-stair-handrail-least",
      "joinery-stair-handrail-most",
      "joinery-stair-guarding-least",
      "joinery-stair-opening",
    ]),
  }
}

/** Most of the page that the drawing of the rises takes, mm. */
const drawingHeight = 150

function figures({ stair, rises }: StairSeen): Block {
  const usual = rises[Math.floor(rises.length / 2)]!.after
  return {
    kind: "figures",
    items: [
      { label: "Rises", value: String(rises.length) },
      { label: "Going", value: mmText(stair.going), unit: "mm" },
      { label: "Pitch", value: fixed(pitchOf(usual, stair.going), 1), unit: "°" },
      { label: "2 × rise + going", value: fixed(twiceRiseAndGoing(usual, stair.going), 0), unit: "mm" },
      { label: "Width", value: mmText(stair.width), unit: "mm" },
    ],
  }
}

function cautionBlock(cautions: readonly Caution[]): Block[] {
  return cautions.length > 0 ? [{ kind: "cautions", items: [...cautions] }] : []
}

function askFirst(outside: readonly Limit[], { changes }: StairSeen): Block {
  return {
    kind: "warning",
    caption: changes
      ? "Ask building control before going on"
      : "As the stair stands; not changed by this job",
    items: outside.map(({ what, here, says }) => `${what} ${here}; guidance says ${says}.`),
  }
}

function riseTable({ rises, below, above, work }: StairSeen): Block {
  const onTreads = work?.onTreads ?? 0
  const half = Math.ceil(rises.length / 2)
  const cells = (rise: Rise | undefined) =>
    rise ? [String(rise.number), fixed(rise.before, 1), fixed(rise.after, 1), "", ""] : ["", "", "", "", ""]
  const columns: Column[] = [
    { label: "Rise", as: "figure", width: 7 },
    { label: "Before", as: "figure", width: 10 },
    { label: "Finished", as: "figure", width: 11 },
    { label: "Taped bare", as: "write", width: 11 },
    { label: "Taped finished", as: "write", width: 11 },
  ]
  const changes = [
    changeText("The first rise", { floor: -below, treads: onTreads }),
    changeText("The last rise", { floor: above, treads: -onTreads }),
  ]
  return {
    kind: "table",
    caption: "Every rise before and after finishes, from the bottom",
    columns: [...columns, ...columns],
    rows: rises
      .slice(0, half)
      .map((rise, index) => ({ cells: [...cells(rise), ...cells(rises[half + index])] })),
    note: changes.filter((text) => text !== "").join(" "),
  }
}

/** How finishes change a rise, in words; empty where they do not. */
function changeText(which: string, by: { floor: number; treads: number }): string {
  const signed = (what: string, value: number) =>
    value === 0 ? [] : [`${value < 0 ? "less" : "plus"} ${mmText(Math.abs(value))} for the ${what}`]
  const parts = [...signed("floor", by.floor), ...signed("treads", by.treads)]
  return parts.length > 0 ? `${which}: ${parts.join(", ")}.` : ""
}

function limitTable(limits: readonly Limit[]): Block {
  return {
    kind: "table",
    caption: "Against guidance for a private stair",
    columns: [
      { label: "What", width: 34 },
      { label: "Here", as: "figure", width: 18 },
      { label: "Guidance", width: 32 },
      { label: "", width: 16 },
    ],
    rows: limits.map(({ what, here, says, within }) => ({
      cells: [what, here, says, within ? "within" : "ask first"],
    })),
    note: "Guidance for England, given as help; building control decides.",
  }
}

function checks({ stair }: StairSeen, rules: Rules): Block {
  const value = (id: string) => mmText(rules.value(`joinery-stair-${id}`))
  const edge =
    stair.openEdge > 0
      ? [
          {
            text: `Stop: open edge of ${mmText(stair.openEdge)} mm while guarding is off. Barrier up first; nobody else on the storey`,
          },
          { text: "Guarding back and tried by hand before the barrier goes" },
        ]
      : []
  return {
    kind: "checks",
    caption: "Guarding, handrail, treads",
    items: [
      ...edge,
      { text: `Guarding at least ${value("guarding-least")} over floor and pitch line`, write: "mm" },
      {
        text: `Handrail ${value("handrail-least")} to ${value("handrail-most")} over the pitch line, unbroken`,
        write: "mm",
      },
      { text: `No gap that passes a ball of ${value("opening")}, no foothold to climb` },
      { text: "Nosings glued and screwed to the structure, the floor free behind them" },
      { text: "Treads dry, covered and clear each evening" },
    ],
  }
}
