import type { Block, Row, SheetModel } from "../kernels/paper.ts"
import { fixed, mmText } from "../kernels/units.ts"
import type { CutList } from "../orders/orders.ts"
import { ruleOfThumb } from "../orders/rule-of-thumb.ts"
import type { EndCut, Piece } from "../trades/trade.ts"
import type { JobResult } from "./job-result.ts"
import { barsDrawing, type NumberedBar } from "./saw-drawing.ts"
import { sawnOn } from "./sawn-on.ts"

const endWords: Record<EndCut["as"], string> = {
  square: "square",
  scribed: "scribe",
  "internal-mitre": "internal mitre",
  "external-mitre": "external mitre",
  "against-architrave": "square to architrave",
  return: "return",
  scarf: "scarf",
}

/** Lengths drawn together over their part of the cut list, so that both stand on a page. */
const lengthsTogether = 7

/** The saw sheet: profile by profile and length by length in sawing order, each piece with its mark and saw settings; what the order survives. */
export function sawSheet(result: JobResult): SheetModel | null {
  const lists = result.orders.cutLists.filter((list) => list.plan.bars.length > 0)
  if (lists.length === 0) return null
  return {
    kind: "saw",
    title: "Saw sheet",
    purpose:
      "Saw length by length in this order; write the mark on the back of each piece; tape it on site before the last cut.",
    room: null,
    trade: null,
    audience: ["trade", "office"],
    hosted: true,
    orientation: "portrait",
    datum: "Long points, millimetres. Settings in degrees off square.",
    blocks: [
      summary(lists, result),
      beforeSawing(lists, result),
      ...lists.flatMap((list) => listBlocks(list, result)),
      ...sawCautions(result),
      { kind: "sign", roles: ["Sawn by", "Foreman"] },
    ],
    rests: [
      "saw-kerf",
      "saw-end-trim",
      "saw-offcut-keep",
      "saw-short-piece",
      "saw-spare-least",
      "joinery-waste",
      ...lists.flatMap(({ product }) => [`saw-spare-${product.material}`, `saw-density-${product.material}`]),
    ],
  }
}

function summary(lists: readonly CutList[], result: JobResult): Block {
  return {
    kind: "table",
    caption: "What is ordered, and what it survives",
    columns: [
      { label: "Profile", width: 25 },
      { label: "Pieces", as: "figure", width: 8 },
      { label: "Lengths by plan", as: "figure", width: 9 },
      { label: "Least cost", width: 11 },
      { label: "True waste", as: "figure", width: 11 },
      { label: "Rule of thumb", as: "figure", width: 17 },
      { label: "Plan saves", as: "figure", width: 8 },
      { label: "Spare, over the plan", as: "figure", width: 15 },
      { label: "Mis-cuts survived", as: "figure", width: 10 },
    ],
    rows: lists.map((list): Row => {
      const { plan, spares, product } = list
      const thumb = ruleOfThumb(list, result.rules)
      return {
        cells: [
          nameOf(product),
          String(list.pieces.length),
          String(plan.lengths),
          plan.proven ? "proven" : `gap ${fixed(100 * (plan.cost / plan.bound - 1), 1)} %`,
          `${fixed(wastePercent(list), 1)} %`,
          thumb ? `${thumb.lengths} of ${mmText(thumb.length)}` : "in hand",
          thumb ? savedText(thumb.lengths * thumb.length, thumb.planMetres * 1000, thumb.length) : "",
          spares ? `${spares.count} of ${mmText(spares.length)}` : "",
          spares ? String(spares.survives) : "",
        ],
      }
    }),
    note: `The plan saves so many lengths. True waste: offcuts, saw cuts and squared ends of what is sawn. Rule of thumb: run and ${result.rules.value("joinery-waste")} %. Spare lengths come over the plan. Mis-cuts survived: so many of the longest piece can be sawn again from spare lengths and offcuts; of shorter ones more.`,
  }
}

/** The rule of thumb less the plan, in lengths of the kind ordered by it. */
function savedText(thumb: number, plan: number, length: number): string {
  const saved = (thumb - plan) / length
  const whole = Math.abs(saved - Math.round(saved)) < 1 / 1000
  const figure = fixed(Math.abs(saved), whole ? 0 : 1)
  if (Number(figure) === 0) return "none"
  return saved > 0 ? figure : `${figure} short`
}

function beforeSawing(lists: readonly CutList[], result: JobResult): Block {
  const { heaviest, longest } = result.job.carry
  const loads = lists.map((list) => {
    const mass = massOf(list, result)
    return mass > heaviest
      ? `${nameOf(list.product)}: ${fixed(mass, 1)} kg a length, two people`
      : `${nameOf(list.product)}: ${Math.floor(heaviest / mass)} lengths at a time`
  })
  return {
    kind: "list",
    caption: "Before sawing",
    items: [
      `No more than ${mmText(longest)} mm and ${heaviest} kg goes up the stair: each length says where it is sawn.`,
      `One person carries: ${loads.join("; ")}.`,
      `Square ${result.rules.value("saw-end-trim")} mm off each end of a new length; the saw takes ${result.rules.value("saw-kerf")} mm a cut; try the mitres on two offcuts first.`,
      ...shortPieces(lists, result),
      "Tape each wall before its piece is sawn and write it in the box. Where the tape is longer than the list, saw that piece last, from an offcut or a spare length: the plan has no slack.",
    ],
  }
}

/** Pieces that no hand should hold at the saw. */
function shortPieces(lists: readonly CutList[], { rules }: JobResult): string[] {
  const least = rules.value("saw-short-piece")
  const short = lists.flatMap(({ pieces }) => pieces.filter((piece) => piece.length < least))
  if (short.length === 0) return []
  const named = short.map(({ mark, length }) => `${mark} (${mmText(length)})`).join(", ")
  return [
    `Shorter than ${least} mm: ${named}. Saw each off the end of its length while that is long and clamped; never hold a short piece to the blade.`,
  ]
}

/** Mass of the longest length of a profile, kg. */
function massOf({ product, plan }: CutList, { rules }: JobResult): number {
  const longest = Math.max(...plan.bars.map((bar) => bar.length))
  const volume = (product.thickness * product.width * longest) / cubicMmInCubicMetre
  return volume * rules.value(`saw-density-${product.material}`)
}

const cubicMmInCubicMetre = 1e9

function wastePercent({ plan }: CutList): number {
  const waste = plan.bars.reduce((sum, bar) => sum + bar.offcut + bar.kerfs + 2 * bar.endTrim, 0)
  const total = plan.bars.reduce((sum, bar) => sum + bar.length, 0)
  return (100 * waste) / total
}

function nameOf({ name, thickness, width }: CutList["product"]): string {
  return `${name} ${thickness} × ${width}`
}

function listBlocks(list: CutList, result: JobResult): Block[] {
  const { plan, product } = list
  const bars = plan.bars.map((bar, index) => ({ bar, number: index + 1 }))
  const pieces = new Map(list.pieces.map((piece) => [piece.mark, piece]))
  const longest = Math.max(...plan.bars.map((bar) => bar.length))
  const kerf = result.rules.value("saw-kerf")
  return [
    { kind: "heading", text: nameOf(product) },
    ...chunks(bars).flatMap((some): Block[] => {
      const from = some[0]!.number
      const to = some[some.length - 1]!.number
      const which = from === to ? `length ${from}` : `lengths ${from} to ${to}`
      return [
        {
          kind: "drawing",
          drawing: barsDrawing({ bars: some, pieces, kerf, longest, name: product.name }),
          caption: `${product.name}, ${which}: slanted ends are sawn at an angle, grey is offcut; figures count.`,
          scale: 1,
          withNext: true,
        },
        {
          kind: "table",
          withPrevious: true,
          caption: `${product.name}, ${which}`,
          columns: [
            { label: "No.", as: "figure", width: 5 },
            { label: "Mark", as: "mark", width: 13 },
            { label: "Cut to", as: "figure", width: 10 },
            { label: "What", width: 24 },
            { label: "Left end", width: 16 },
            { label: "Right end", width: 16 },
            { label: "Taped on site", as: "write", width: 12 },
            { label: "Sawn", as: "tick", width: 6 },
          ],
          rows: some.flatMap((each) => barRows(each, { pieces, result })),
        },
      ]
    }),
  ]
}

function chunks(bars: readonly NumberedBar[]): NumberedBar[][] {
  const count = Math.ceil(bars.length / lengthsTogether)
  const each = Math.ceil(bars.length / count)
  return Array.from({ length: count }, (_, index) => bars.slice(index * each, (index + 1) * each))
}

interface OnSaw {
  pieces: ReadonlyMap<string, Piece>
  result: JobResult
}

function barRows({ bar, number }: NumberedBar, { pieces, result }: OnSaw): Row[] {
  const { house, job } = result
  const where = sawnOn(bar, { pieces, house, longest: job.carry.longest })
  const place = where === null ? "" : where.tooLong ? `Below: ${where.name}` : `On: ${where.name}`
  const offcut = Math.floor(bar.offcut)
  const left = offcut === 0 ? "no offcut" : `offcut ${mmText(offcut)}${bar.keep ? ", keep" : ""}`
  const head: Row = {
    as: "group",
    cells: [String(number), bar.inHand ? "in hand" : "new", mmText(bar.length), place, left, "", "", ""],
  }
  return [head, ...bar.pieces.flatMap((mark) => pieceRow(pieces.get(mark)))]
}

function pieceRow(piece: Piece | undefined): Row[] {
  if (!piece) return []
  const flat = !piece.what.startsWith("skirting")
  return [
    {
      cells: [
        "",
        piece.mark,
        mmText(piece.length),
        piece.what,
        endText(piece.left, flat),
        endText(piece.right, flat),
        "",
        "",
      ],
    },
  ]
}

/**
 * An end cut for the sawyer: its name, and the setting to half a degree where it is not square.
 * @param flat true if the piece lies on its back on the saw, so that its mitres are plain ones
 */
export function endText({ as, setting }: EndCut, flat = false): string {
  const half = Math.round(setting * 2) / 2
  if (half === 0) return endWords[as]
  const name = as === "square" ? "bevel" : flat && as === "internal-mitre" ? "mitre" : endWords[as]
  return `${name} ${fixed(half, half % 1 === 0 ? 0 : 1)}°`
}

/** Cautions of the saw: those that joinery gives in any room, each once. */
function sawCautions({ results }: JobResult): Block[] {
  const wanted = ["mdf-dust", "hardwood-dust", "mitre-saw"]
  const all = results.flatMap((each) => each.work.cautions)
  const items = wanted.flatMap((id) => all.find((caution) => caution.id === id) ?? [])
  return items.length > 0 ? [{ kind: "cautions", items }] : []
}
