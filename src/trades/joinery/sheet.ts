import type { Block, SheetModel } from "../../kernels/paper.ts"
import { fixed, mmText } from "../../kernels/units.ts"
import { datumText } from "../datum.ts"
import { finishedFloor } from "../finished-floor.ts"
import { onPaper } from "../rests.ts"
import type { Task, Work } from "../trade.ts"
import { elevationScale, unfoldedPieces } from "./elevations.ts"
import type { JoineryInputs } from "./inputs.ts"
import { type KeptLining, keptLinings } from "./kept-linings.ts"
import { pieceTable } from "./piece-table.ts"
import type { ThresholdBar } from "./thresholds.ts"
import { allOf, type RoomPieces, roomPieces } from "./work.ts"

type JoineryTask = Task<JoineryInputs>

/** The joinery sheet of a room: its walls unfolded with the pieces on them, each piece with long point and both ends, schedules, how it is fixed. */
export function joinerySheets(task: JoineryTask, work: Work): SheetModel[] {
  const cut = roomPieces(task)
  const all = allOf(cut)
  const kept = keptLinings(task)
  if (all.length + kept.length + cut.bars.length === 0) return []
  const { room } = task
  return [
    {
      kind: "joinery",
      title: "Joinery pieces by wall",
      purpose: "Find the piece by its mark, fix it on its wall; tape the wall again before sawing.",
      room: room.id,
      trade: "joinery",
      audience: ["trade", "office"],
      hosted: true,
      orientation: "portrait",
      datum: datumText(room),
      blocks: [
        figures(task, cut, all.length),
        ...elevations(task, cut),
        ...(all.length > 0 ? [pieceTable(all, "Pieces by wall")] : []),
        ...sawnNote(task),
        ...sliversNote(cut),
        ...linings(kept),
        ...thresholds(cut.bars),
        finish(cut),
        checks(task, cut),
        { kind: "cautions", items: work.cautions },
        { kind: "sign", roles: ["Joiner", "Foreman"] },
      ],
      rests: onPaper(work.rests),
    },
  ]
}

function figures({ job, facts }: JoineryTask, cut: RoomPieces, count: number): Block {
  const run = cut.skirtings.reduce((sum, piece) => sum + piece.length, 0)
  const { skirting } = cut
  const gap = facts.floorGap
  return {
    kind: "figures",
    items: [
      ...(skirting ? [{ label: "Skirting", value: fixed(run / 1000, 2), unit: "m" }] : []),
      { label: "Pieces", value: String(count) },
      ...(skirting && gap !== undefined
        ? [
            {
              label: `Covers the gap of ${mmText(gap)} by`,
              value: mmText(skirting.thickness - gap),
              unit: "mm",
            },
          ]
        : []),
      { label: "Margin at linings", value: String(job.rules.value("joinery-architrave-margin")), unit: "mm" },
      { label: "Longest up the stair", value: mmText(job.carry.longest), unit: "mm" },
    ],
  }
}

function elevations(task: JoineryTask, cut: RoomPieces): Block[] {
  const { room, job } = task
  return unfoldedPieces({
    room,
    floor: finishedFloor(task),
    skirting: cut.skirting,
    architrave: cut.architrave,
    margin: job.rules.value("joinery-architrave-margin"),
    runs: cut.runs,
    sets: cut.sets,
    pieces: allOf(cut),
  }).map((drawing) => ({
    kind: "drawing",
    drawing,
    caption: `${drawing.title}, seen from inside.`,
    scale: elevationScale,
  }))
}

function sawnNote({ input }: JoineryTask): Block[] {
  if (input.sawn.length === 0) return []
  return [
    {
      kind: "text",
      as: "note",
      paragraphs: [`Sawn already, not on the saw sheet: ${input.sawn.join(", ")}.`],
    },
  ]
}

/** Where a joiner would look for a piece that is not there. */
function sliversNote({ slivers }: RoomPieces): Block[] {
  if (slivers.length === 0) return []
  const each = slivers.map(({ wall, length }) => `wall ${wall} (${mmText(length)} mm)`).join(", ")
  return [
    {
      kind: "text",
      as: "note",
      paragraphs: [
        `No piece of skirting is sawn for the stretch on ${each}: run the next wall's board up to the architrave, fill what is left with caulk or a slip fixed to the wall.`,
      ],
    },
  ]
}

function linings(kept: readonly KeptLining[]): Block[] {
  if (kept.length === 0) return []
  return [
    {
      kind: "table",
      caption: "Linings that stay: cut at the foot before the floor is laid",
      columns: [
        { label: "Door", as: "mark", width: 14 },
        { label: "Wall", as: "figure", width: 10 },
        { label: "Cut off over the deck", as: "figure", width: 26 },
        { label: "How", width: 40 },
        { label: "Cut", as: "tick", width: 10 },
      ],
      rows: kept.map(({ door, wall, cut }) => ({
        cells: [door, String(wall), `${fixed(cut, 0)} mm`, "saw flat on an offcut of board and underlay", ""],
      })),
      note: "Lining, stops and old architraves alike, on the side of this room.",
    },
  ]
}

function thresholds(bars: readonly ThresholdBar[]): Block[] {
  if (bars.length === 0) return []
  return [
    {
      kind: "table",
      caption: "Threshold bars",
      columns: [
        { label: "Door", as: "mark", width: 9 },
        { label: "Length", as: "figure", width: 12 },
        { label: "Floor here", as: "figure", width: 18 },
        { label: "Floor beyond", as: "figure", width: 18 },
        { label: "Step", as: "figure", width: 12 },
        { label: "Profile", width: 22 },
        { label: "Fitted", as: "tick", width: 9 },
      ],
      rows: bars.map((bar) => ({
        cells: [
          bar.door,
          mmText(bar.length),
          levelText(bar.here),
          levelText(bar.there),
          bar.step === null ? "tape it" : stepText(bar.step),
          bar.profile,
          "",
        ],
      })),
      note: "Floors over the deck, mm. Bars between the legs of the lining, fixed to the deck or to one floor only.",
    },
  ]
}

function levelText({ room, level, finish }: { room: string; level: number | null; finish: string }): string {
  return [room, finish, level === null ? "" : mmText(level)].filter((part) => part !== "").join(" ")
}

function stepText(step: number): string {
  if (step === 0) return "level"
  return step > 0 ? `up ${mmText(step)}` : `down ${mmText(-step)}`
}

function finish({ skirting, architrave }: RoomPieces): Block {
  const goods = [skirting, architrave].filter((good) => good !== undefined)
  const isMdf = goods.some((good) => good.material === "mdf")
  const items = [
    ...(goods.some((good) => !good.primed) ? ["Prime every face and the back before fixing."] : []),
    isMdf
      ? "MDF: undercoat face and edges before fixing; seal every sawn end and routed edge twice, sand between."
      : "Undercoat or seal face and edges before fixing, and every sawn end.",
    "Nail heads punched below the face and stopped; caulk to the wall only, never to the floor.",
    "Boards indoors and dry, on bearers, for as long as the floor was.",
  ]
  return { kind: "list", caption: "Finish before fixing", items }
}

function checks({ job, input }: JoineryTask, { skirting, sets }: RoomPieces): Block {
  const value = (id: string) => job.rules.value(id)
  const rows =
    skirting && skirting.width > value("joinery-skirting-second-row")
      ? "two rows of fixings"
      : "one row of fixings"
  const adhesive = `Adhesive in a zig-zag bead on the wall, about one cartridge in ${value("joinery-adhesive-run")} m; ${value("joinery-adhesive-cure")} h to full strength`
  return {
    kind: "checks",
    caption: "Before and after fixing",
    items: [
      { text: "Walls scanned; pipes and cables marked" },
      { text: "Boards primed on all faces, sawn ends sealed" },
      { text: `Timber moisture at most ${value("joinery-paint-moisture")} % before painting`, write: "%" },
      ...(sets.length > 0
        ? [
            {
              text: `Architraves: margin equal all round, fixings at most ${value("joinery-architrave-fixing")} apart into lining and wall${input.plinths ? ", legs on plinth blocks" : ""}`,
            },
          ]
        : []),
      ...(skirting
        ? [
            { text: "Floor laid, gap clear all round, no glue or plaster in it" },
            {
              text: `Skirting scribed to the floor, fixed to the wall only, ${rows}, at most ${mmText(value("joinery-skirting-fixing"))} apart`,
            },
            { text: adhesive },
            {
              text: `Joints over a fixing, none within ${mmText(value("joinery-scarf-corner"))} of a corner`,
            },
          ]
        : []),
    ],
  }
}
