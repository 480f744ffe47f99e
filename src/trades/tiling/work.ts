import type { Finding } from "../../kernels/finding.ts"
import { roundHalfUp, type SquareMetres } from "../../kernels/units.ts"
import { type DryingProcessId, dryingHours, dryingProcesses, dryingRests } from "../../rulebook/drying.ts"
import { finishedFloor } from "../finished-floor.ts"
import {
  type Caution,
  type Gate,
  noWork,
  type Quantity,
  type RoomFacts,
  type Step,
  type Task,
  type Work,
} from "../trade.ts"
import { jointOf, type TileField, tiledArea, tileFields, tileFor } from "./fields.ts"
import type { TilingInputs } from "./inputs.ts"
import { meetings, tiledBuildUp } from "./levels.ts"
import { leastCut } from "./set-out.ts"

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
  const findings = [
    ...missing(task),
    ...placeFindings(task),
    ...cutFindings(task, fields),
    ...airFindings(task),
  ]
  if (fields.length === 0) return { ...noWork(), findings }
  return {
    ...noWork(),
    quantities: quantities(task, fields),
    steps: steps(task, fields),
    cautions: cautions(task),
    findings,
    rests: restsOf(task, fields),
    results: {
      fields: fields.map(({ name, width, height, area, across, up, tiles }) => ({
        name,
        width: roundHalfUp(width, 0),
        height: roundHalfUp(height, 0),
        area: roundHalfUp(area, 3),
        across: rounded(across),
        up: rounded(up),
        tiles,
      })),
      meetings: meetings(task),
    },
  }
}

function rounded({ whole, first, last, from, count }: TileField["across"]) {
  const cut = (mm: number | null) => (mm === null ? null : roundHalfUp(mm, 1))
  return { whole, first: cut(first), last: cut(last), from, count }
}

/**
 * Grout in the joints, kg a m2: (L + W) / (L × W) × depth × joint × density, lengths in mm, density in kg/l
 * (common practice of grout makers).
 */
export function groutPerM2(
  tile: { width: number; height: number; thickness: number },
  joint: number,
  density: number,
): number {
  return ((tile.width + tile.height) / (tile.width * tile.height)) * tile.thickness * joint * density
}

function quantities(task: TilingTask, fields: TileField[]): Quantity[] {
  const { rules } = task.job
  const waste = 1 + rules.value("tile-waste") / 100
  const paste = 1 + rules.value("tile-paste-waste") / 100
  const joint = jointOf(task)
  const common = { trade: "tiling", room: task.room.id }
  const tiles = fields.map((field): Quantity => {
    const one = (field.tile.width * field.tile.height) / 1_000_000
    return {
      ...common,
      what: `${field.tile.name}, ${field.name.toLowerCase()}`,
      product: field.tile.id,
      net: field.area,
      gross: field.tiles * one * waste,
      unit: "m2",
      from: `${field.across.count} × ${field.up.count} = ${field.tiles} tiles after openings, and ${rules.value("tile-waste")} %`,
    }
  })
  const adhesive = fields.reduce(
    (sum, field) => sum + field.area * rules.value(`tile-adhesive-${field.on}`),
    0,
  )
  const grout = fields.reduce(
    (sum, field) => sum + field.area * groutPerM2(field.tile, joint, rules.value("tile-grout-density")),
    0,
  )
  const sealed = fields.reduce((sum, field) => sum + field.sealed, 0)
  const by = (use: "tileAdhesive" | "grout" | "tileTrim" | "sealant") =>
    task.job.product(task.input.products[use] ?? task.job.chosen(use), "each")?.id ?? null
  return [
    ...tiles,
    {
      ...common,
      what: "Tile adhesive",
      product: by("tileAdhesive"),
      net: adhesive,
      gross: adhesive * paste,
      unit: "kg",
      from: "m2 of walls and floor by their rates",
    },
    {
      ...common,
      what: "Grout",
      product: by("grout"),
      net: grout,
      gross: grout * paste,
      unit: "kg",
      from: `joints of ${joint} mm, tile thickness deep`,
    },
    {
      ...common,
      what: "Sealant at corners and floor",
      product: by("sealant"),
      net: sealed,
      gross: sealed,
      unit: "m",
      from: "round floor, sides and foot of walls",
    },
    ...(task.input.trim > 0
      ? [
          {
            ...common,
            what: "Edge trim",
            product: by("tileTrim"),
            net: task.input.trim,
            gross: task.input.trim * waste,
            unit: "m" as const,
            from: "as written",
          },
        ]
      : []),
  ]
}

function steps(task: TilingTask, fields: TileField[]): Step[] {
  const out = (id: string) => task.job.rules.value(id)
  const hours = fields.reduce((sum, field) => sum + field.area / out(`tile-out-${field.on}`), 0)
  const area: SquareMetres = fields.reduce((sum, field) => sum + field.area, 0)
  const sealed = fields.reduce((sum, field) => sum + field.sealed, 0)
  const key = (step: string) => `tiling/${task.room.id}/${step}`
  return [
    step(task, "prepare", {
      title: "Prime, waterproof, set out",
      detail: `Backing dry, flat and firm. ${task.input.wetWalls ? "Waterproof behind shower and bath and lap it over the floor. " : ""}Draw centre and level lines; lay out a dry row before mixing.`,
      stage: "tile",
      hours: out("tile-out-prepare"),
      hold: "Setting out agreed: no sliver at door, corner or sill.",
    }),
    step(task, "lay", {
      title: `Tile ${fields.map((field) => field.name.toLowerCase()).join(", ")}`,
      detail:
        "Solid bed on floors and in the wet; joints open at corners and at the floor for sealant. Dust cut wet.",
      stage: "tile",
      hours,
      after: [key("prepare")],
      ...gate(task, "tile-adhesive"),
      noisy: true,
      dusty: true,
    }),
    step(task, "grout", {
      title: "Grout",
      detail: "Wash off before it hardens; corners and floor joint left open.",
      stage: "tile",
      hours: area / out("tile-out-grout"),
      after: [key("lay")],
      ...gate(task, "grout"),
      hold: "Keep off until the hours have passed; no fixings before.",
    }),
    step(task, "seal", {
      title: "Seal corners and floor joint",
      detail: `${roundHalfUp(sealed, 1)} m of joint, clean and dry, after sanitaryware stands. No water on the grout before its full time.`,
      stage: "fill",
      hours: sealed / out("tile-out-seal"),
      after: [`plumbing/${task.room.id}/seal`],
      ...gate(task, "sealant", out("tile-edge-joint")),
    }),
  ]
}

function gate(task: TilingTask, process: DryingProcessId, thickness?: number): { gate?: Gate } {
  const hours = dryingHours(
    process,
    { ...task.job.climate, ...(thickness ? { thickness } : {}) },
    task.job.rules,
  )
  if (hours === "do not") return {}
  const { what, next, until, forbids } = dryingProcesses[process]
  const whole = Math.ceil(Number(hours.toPrecision(9)))
  return { gate: { process: `${what}, before ${next}`, hours: whole, until, forbids: [...forbids] } }
}

function cautions(task: TilingTask): Caution[] {
  const trade = "tiling"
  return [
    {
      trade,
      id: "tile-dust",
      text: "Cut wet or with extraction; mask; no dry grinding of tile or backing.",
      why: "Dust of tile and mortar holds silica, which scars lungs.",
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
            text: "Ask before tiling a timber floor: its stiffness must be enough for tile.",
            why: "A floor that bends cracks tile and joints.",
            defer: "The structural engineer; the adhesive's maker.",
          },
        ]
      : []),
  ]
}

function missing(task: TilingTask): Finding[] {
  const need = [
    ...(task.input.walls.length > 0 && !tileFor(task, "wallTile") ? ["wallTile" as const] : []),
    ...(task.input.floor && !tileFor(task, "floorTile") ? ["floorTile" as const] : []),
  ]
  return need.map((use) => ({
    code: "no-tile-chosen",
    severity: "warning",
    at: task.at,
    message: `No tile is chosen for "${use}" in ${task.room.id}; nothing is set out or ordered.`,
    mend: `Name one under products.${use} here, or "${use}" under chosen in products.yaml.`,
  }))
}

function placeFindings(task: TilingTask): Finding[] {
  const floor = finishedFloor(task)
  return task.input.walls.flatMap((each, index): Finding[] => {
    const at = { file: task.at.file, path: [...task.at.path, "walls", index] }
    const wall = task.room.walls.find((other) => other.number === each.wall)
    if (!wall)
      return [
        {
          code: "no-such-wall",
          severity: "error",
          at: { ...at, path: [...at.path, "wall"] },
          message: `${task.room.id} has no wall ${each.wall}.`,
        },
      ]
    const to = each.to ?? wall.length
    if (each.from >= to || each.foot >= each.top || to > wall.length + 1) {
      return [
        {
          code: "tiling-off-wall",
          severity: "error",
          at,
          message: `Tiling from ${each.from} to ${Math.round(to)} and from ${each.foot} to ${each.top} mm is no part of wall ${wall.number}, which is ${Math.round(wall.length)} mm long.`,
        },
      ]
    }
    const top = Math.max(...wall.elevation.map((corner) => corner.y)) - floor
    if (each.top <= top) return []
    return [
      {
        code: "tiling-above-wall",
        severity: "error",
        at: { ...at, path: [...at.path, "top"] },
        message: `Tiling reaches ${each.top} mm over the finished floor; wall ${wall.number} is ${Math.round(top)} mm high.`,
      },
    ]
  })
}

function cutFindings(task: TilingTask, fields: TileField[]): Finding[] {
  const share = task.job.rules.value("tile-least-cut")
  return fields.flatMap((field): Finding[] => {
    const rows = leastCut(field.up)
    if (rows === null || rows >= share * field.tile.height || field.up.count <= 1) return []
    const message = `${field.name}: the cut row is only ${Math.round(rows)} mm of a ${field.tile.height} mm tile.`
    return [
      {
        code: "narrow-cut",
        severity: "note",
        at: task.at,
        message,
        mend: "Set rows out from the centre, or move the upper edge.",
      },
    ]
  })
}

function airFindings(task: TilingTask): Finding[] {
  if (!task.input.floor && task.input.walls.length === 0) return []
  const { climate, rules } = task.job
  const barred = (["tile-adhesive", "grout", "sealant"] as const).filter(
    (each) => dryingHours(each, climate, rules) === "do not",
  )
  return barred.map((each) => ({
    code: "air-outside-range",
    severity: "error",
    at: { file: "job.yaml", path: ["climate"] },
    message: `${dryingProcesses[each].what} must not be used at ${climate.temperature} °C and ${climate.humidity} %.`,
    mend: "Warm, dry and air the rooms, or wait.",
  }))
}

function restsOf(task: TilingTask, fields: TileField[]): string[] {
  return [
    ...(task.input.joint === undefined ? ["tile-joint"] : []),
    ...(task.input.floor && task.input.floorBuildUp === undefined ? ["tile-bed"] : []),
    ...["tile-edge-joint", "tile-least-cut", "tile-grout-density", "tile-waste", "tile-paste-waste"],
    ...new Set(fields.map((field) => `tile-adhesive-${field.on}`)),
    ...new Set((["tile-adhesive", "grout", "grout-wet", "sealant"] as const).flatMap(dryingRests)),
  ]
}

function step(
  task: TilingTask,
  key: string,
  of: Pick<Step, "title" | "detail" | "stage" | "hours"> & Partial<Step>,
): Step {
  const common = { trade: "tiling", room: task.room.id, after: [], noisy: false, dusty: false }
  return { ...common, ...of, key: `tiling/${task.room.id}/${key}` }
}
