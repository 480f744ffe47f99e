import type { Finding } from "../../kernels/finding.ts"
import { dryingHours, dryingProcesses } from "../../rulebook/drying.ts"
import { finishedFloor } from "../finished-floor.ts"
import type { Task } from "../trade.ts"
import { type TileField, tileFor } from "./fields.ts"
import type { TilingInputs } from "./inputs.ts"
import { leastCut } from "./set-out.ts"

type TilingTask = Task<TilingInputs>

/** What is missing, does not go where it is written, is cut too narrow, or must not be done in the job's air. */
export function tilingFindings(task: TilingTask, fields: TileField[]): Finding[] {
  return [...missing(task), ...placeFindings(task), ...cutFindings(task, fields), ...airFindings(task)]
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
