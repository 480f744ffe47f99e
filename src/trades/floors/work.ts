import { roundHalfUp, squareMetres } from "../../kernels/units.ts"
import { dryingRests } from "../../rulebook/drying.ts"
import { type EndCut, noWork, type Piece, type Task, type Work } from "../trade.ts"
import { floorCautions } from "./cautions.ts"
import { withPlan } from "./floor-plans.ts"
import type { FloorInputs } from "./inputs.ts"
import { lengthOf, type Offcut } from "./layout/boards.ts"
import { oilFindings, oilProcesses } from "./oil.ts"
import { type FloorPlan, floorAreas, planFloor } from "./plan-floor.ts"
import { floorQuantities } from "./quantities.ts"
import { floorRules } from "./rules.ts"
import { floatingSteps, stayingSteps } from "./steps.ts"

/** Year from which a house is taken to hold no asbestos: use was banned in 1999. */
const asbestosUntil = 2000

/**
 * The floor of one room: a floating floor worked out row by row, or what there is to do for one that stays.
 * Quantities are gross before packs; orders round them. Findings name rule, figure and cure.
 */
export function floorWork(task: Task<FloorInputs>): Work {
  if (task.input.finish === "stays") return stayingWork(task)
  if (task.input.finish !== "floating-board") return { ...noWork(), results: { finish: task.input.finish } }
  const { plan, findings } = planFloor(task)
  if (!plan) return { ...noWork(), findings, results: { finish: task.input.finish } }
  const built = task.job.house.built
  const work: Work = {
    ...noWork(),
    pieces: breakPieces(task, plan),
    quantities: floorQuantities(task, plan),
    steps: floatingSteps(task, plan),
    cautions: floorCautions({
      laysBoards: true,
      screwsDeck: plan.deck !== undefined,
      oils: task.input.oilCoats > 0,
      builtBefore2000: built === undefined || built < asbestosUntil,
    }),
    findings: [...findings, ...oilFindings(task)],
    rests: restsOf(task.input, plan),
    results: resultsOf(plan),
  }
  return withPlan(work, plan)
}

/** Profiles over movement breaks, to be cut from lengths: in equal parts where no length reaches from wall to wall. */
function breakPieces({ room, job }: Task<FloorInputs>, { breaks, profile }: FloorPlan): Piece[] {
  if (!profile) return []
  const square: EndCut = { as: "square", setting: 0 }
  const longest =
    Math.max(...profile.lengths.map((each) => each.length)) - 2 * job.rules.value("saw-end-trim")
  return breaks.flatMap(({ number, wall, length }) => {
    const parts = Math.ceil(length / longest)
    return Array.from(
      { length: parts },
      (_, part): Piece => ({
        mark: `${room.id}-F${number}${parts > 1 ? String.fromCharCode("a".charCodeAt(0) + part) : ""}`,
        trade: "floors",
        room: room.id,
        wall,
        product: profile.id,
        what: `movement profile over break ${number}`,
        length: length / parts,
        left: square,
        right: square,
        mayBeJointed: false,
      }),
    )
  })
}

function stayingWork(task: Task<FloorInputs>): Work {
  return {
    ...noWork(),
    steps: stayingSteps(task),
    rests: ["floor-pace-covering"],
    results: { finish: "stays", stays: task.input.stays },
  }
}

/** Ids of the rules that a floating floor rests on: all but those of work that is not done here. */
function restsOf(input: FloorInputs, plan: FloorPlan): string[] {
  const left = (id: string) =>
    (input.oilCoats === 0 && (id.includes("-oil-") || id === "floor-pace-oil")) ||
    (input.joints === "locked" && id.includes("-glue")) ||
    (plan.oil?.rate !== undefined && id === "floor-oil-rate") ||
    (plan.movement.shareByMaker && id === "floor-movement-engineered") ||
    (plan.breaks.length === 0 && id.startsWith("floor-break-")) ||
    (!plan.deck && id.includes("screw")) ||
    (plan.deck?.is !== "sheets" && id.includes("-sheet-")) ||
    (plan.limits[0]?.unit === "%" ? id === "floor-deck-humidity-most" : id === "floor-deck-moisture-most")
  const oil = input.oilCoats > 0 ? [...new Set(oilProcesses.flatMap(dryingRests))] : []
  return [...floorRules.map((rule) => rule.id).filter((id) => !left(id)), ...oil]
}

function resultsOf(plan: FloorPlan): Record<string, unknown> {
  const { layout, movement } = plan
  const { whole, laid } = floorAreas(plan)
  return {
    finish: "floating-board",
    product: plan.board.id,
    areaToWalls: roundHalfUp(whole, 3),
    areaLaid: roundHalfUp(laid, 3),
    gap: movement.gap,
    gapByRule: movement.byRule,
    gapByCalculation: movement.byCalculation,
    growth: roundHalfUp(movement.growth, 1),
    shrinkage: roundHalfUp(movement.shrinkage, 1),
    buildUp: plan.buildUp,
    firstRowWall: plan.direction.wall.number,
    boards: layout.boards,
    boardsAtLeast: plan.board.mix ? null : layout.bound,
    packs: plan.packs,
    packsAtLeast: plan.board.mix ? layout.bound : null,
    lengths: plan.board.mix?.map(({ length }) => ({
      length,
      boards: layout.lengths.filter((own) => own === length).length,
    })),
    breaks: plan.breaks.map(({ wall, fromLeft, length }) => ({
      wall,
      fromLeft,
      length: roundHalfUp(length, 1),
    })),
    bought: roundHalfUp(squareMetres(layout.areas.bought), 3),
    lost: roundHalfUp(squareMetres(layout.areas.lost), 3),
    offcutArea: roundHalfUp(squareMetres(layout.areas.offcuts), 3),
    provenFewest: (layout.packs ?? layout.boards) === layout.bound,
    brought: layout.brought.map(({ mark, from, to }) => ({ mark, length: roundHalfUp(to - from, 1) })),
    offcuts: layout.offcuts.map(offcutOf),
    screws: plan.deck?.screws ?? 0,
    rows: layout.rows.flatMap((row) =>
      row.runs.map((run) => ({
        row: run.name,
        widthLeft: roundHalfUp(run.widths.left, 1),
        widthRight: roundHalfUp(run.widths.right, 1),
        pieces: run.pieces.map((piece) => ({
          board: piece.board,
          of: piece.of,
          ...(piece.room === null ? {} : { ofRoom: piece.room }),
          role: piece.role,
          length: roundHalfUp(piece.right - piece.left, 1),
          from: piece.source ?? "new board",
        })),
      })),
    ),
  }
}

function offcutOf(offcut: Offcut) {
  return {
    mark: offcut.mark,
    length: roundHalfUp(lengthOf(offcut), 1),
    end: offcut.to === offcut.of ? "right" : offcut.from === 0 ? "left" : "none",
  }
}
