import { roundHalfUp } from "../../kernels/units.ts"
import { dryingRests } from "../../rulebook/drying.ts"
import { type Caution, noWork, type RoomFacts, type Task, type Work } from "../trade.ts"
import { type TileField, tiledArea, tileFields } from "./fields.ts"
import { tilingFindings } from "./findings.ts"
import type { TilingInputs } from "./inputs.ts"
import { meetings, tiledBuildUp } from "./levels.ts"
import { tilingQuantities } from "./quantities.ts"
import { tilingSteps } from "./steps.ts"

type TilingTask = Task<TilingInputs>

/** What tiling passes on: wall not to be painted, and the floor's thickness and finish where it is tiled. */
export function tilingFacts(task: TilingTask): RoomFacts {
  const tiledWall = task.input.walls.reduce((sum, each) => {
    const wall = task.room.walls.find((other) => other.number === each.wall)
    return wall ? sum + Math.max(0, tiledArea(task, each, wall)) : sum
  }, 0)
  const buildUp = task.input.floor ? tiledBuildUp(task) : undefined
  return {
    ...(tiledWall > 0 ? { tiledWall } : {}),
    ...(task.input.floor ? { floorFinish: "tile" } : {}),
    ...(buildUp !== undefined ? { floorBuildUp: buildUp } : {}),
  }
}

/** Tiling of one room: fields set out, tiles, adhesive, grout, and the cure before anything is loaded or wet. */
export function tilingWork(task: TilingTask): Work {
  const fields = tileFields(task)
  const findings = tilingFindings(task, fields)
  if (fields.length === 0) return { ...noWork(), findings }
  return {
    ...noWork(),
    quantities: tilingQuantities(task, fields),
    steps: tilingSteps(task, fields),
    cautions: cautions(task),
    findings,
    rests: restsOf(task, fields),
    results: {
      fields: fields.map(({ name, width, height, area, across, up, pieces }) => ({
        name,
        width: roundHalfUp(width, 0),
        height: roundHalfUp(height, 0),
        area: roundHalfUp(area, 3),
        across: rounded(across),
        up: rounded(up),
        tiles: pieces.length,
      })),
      meetings: meetings(task),
    },
  }
}

function rounded({ whole, first, last, from, count }: TileField["across"]) {
  const cut = (mm: number | null) => (mm === null ? null : roundHalfUp(mm, 1))
  return { whole, first: cut(first), last: cut(last), from, count }
}

function restsOf(task: TilingTask, fields: TileField[]): string[] {
  return [
    ...(task.input.joint === undefined ? ["tile-joint"] : []),
    ...(task.input.floor && task.input.floorBuildUp === undefined ? ["tile-bed"] : []),
    ...["tile-edge-joint", "tile-least-cut", "tile-grout-density", "tile-waste", "tile-paste-waste"],
    ...new Set(fields.flatMap((field) => [`tile-adhesive-${field.on}`, `tile-out-${field.on}`])),
    ...["tile-out-prepare", "tile-out-grout", "tile-out-seal"],
    ...new Set((["tile-adhesive", "grout", "grout-wet", "sealant"] as const).flatMap(dryingRests)),
  ]
}

function cautions(task: TilingTask): Caution[] {
  const trade = "tiling"
  return [
    {
      trade,
      id: "tile-dust",
      text: "Cut wet or with extraction; mask; no dry grinding of tile or backing.",
      why: "Silica dust scars lungs.",
      defer: "The maker's safety sheet; the rules on dust at work.",
    },
    {
      trade,
      id: "cement",
      text: "Gloves and goggles: wet adhesive and grout burn skin and eyes.",
      why: "Cement is caustic.",
      defer: "The maker's safety sheet.",
    },
    ...(task.room.hidden.length > 0
      ? [
          {
            trade,
            id: "hidden",
            text: "Pipes and cables are marked in this room: scan before drilling tile.",
            why: "They run behind and under the tile.",
            defer: "The plumber and the electrician.",
          },
        ]
      : []),
    ...(task.input.floor
      ? [
          {
            trade,
            id: "floor-load",
            text: "Ask before tiling a timber floor.",
            why: "One that bends cracks tile and joints.",
            defer: "The structural engineer; the adhesive's maker.",
          },
        ]
      : []),
  ]
}
