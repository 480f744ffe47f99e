import type { Finding } from "../../kernels/finding.ts"
import type { Mm } from "../../kernels/units.ts"
import { finishedFloor } from "../finished-floor.ts"
import type { Task } from "../trade.ts"
import type { PlumbingInputs, Radiator } from "./inputs.ts"

/** A radiator as it hangs, with its pipes through the floor; mm. */
export interface HungRadiator {
  number: number
  radiator: Radiator
  /** Finished floor to its lower and upper edge. */
  foot: Mm
  top: Mm
  /** Centres of the pipes from the wall's left end, and off the wall. */
  tails: Mm[]
  tailsOff: Mm
  /** Hole in the floor: the pipe and a gap on both sides. */
  hole: Mm
  gap: Mm
}

/** Radiators of a room, numbered as written. */
export function hungRadiators(task: Task<PlumbingInputs>): HungRadiator[] {
  const { rules } = task.job
  const gap = task.facts.floorGap ?? rules.value("plumb-pipe-gap")
  return task.input.radiators.map((radiator, index) => {
    const foot = radiator.foot ?? rules.value("plumb-radiator-foot")
    const beside = rules.value("plumb-tail-beside")
    return {
      number: index + 1,
      radiator,
      foot,
      top: foot + radiator.height,
      tails: radiator.tails ?? [radiator.fromLeft - beside, radiator.fromLeft + radiator.width + beside],
      tailsOff: radiator.tailsOff ?? rules.value("plumb-tail-off"),
      hole: holeFor(radiator.pipe, gap),
      gap,
    }
  })
}

/** Hole for a pipe through a floor that moves: the pipe and a gap on both sides, mm. */
export function holeFor(pipe: Mm, gap: Mm): Mm {
  return pipe + 2 * gap
}

/** Radiators that do not go where they are written. */
export function radiatorFindings(task: Task<PlumbingInputs>, radiators: HungRadiator[]): Finding[] {
  const floor = finishedFloor(task)
  return radiators.flatMap((each, index): Finding[] => {
    const at = { file: task.at.file, path: [...task.at.path, "radiators", index] }
    const { radiator } = each
    const wall = task.room.walls.find((other) => other.number === radiator.wall)
    if (!wall) return [noSuchWall(task, [...at.path, "wall"], radiator.wall)]
    const left = Math.min(radiator.fromLeft, ...each.tails)
    const right = Math.max(radiator.fromLeft + radiator.width, ...each.tails)
    const found: Finding[] = []
    const add = (code: string, key: string, message: string, mend: string) =>
      found.push({ code, severity: "error", at: { ...at, path: [...at.path, key] }, message, mend })
    if (left < 0 || right > wall.length) {
      add(
        "radiator-off-wall",
        "width",
        `Radiator ${each.number} and its pipes reach from ${Math.round(left)} to ${Math.round(right)} mm; wall ${wall.number} is ${Math.round(wall.length)} mm long.`,
        "Move it or take a narrower one.",
      )
    }
    const door = wall.doors.find(
      (opening) => right > opening.fromLeft && left < opening.fromLeft + opening.width,
    )
    if (door)
      add(
        "radiator-at-doorway",
        "fromLeft",
        `Radiator ${each.number} stands in doorway ${door.door.id}.`,
        "Move it clear of the doorway.",
      )
    const lowestTop = Math.min(...wall.elevation.slice(2).map((corner) => corner.y)) - floor
    if (each.top > lowestTop && !door) {
      found.push({
        code: "radiator-above-wall",
        severity: "warning",
        at: { ...at, path: [...at.path, "height"] },
        message: `Radiator ${each.number} reaches ${Math.round(each.top)} mm over the finished floor; wall ${wall.number} is only ${Math.round(lowestTop)} mm high at its lowest.`,
        mend: "Check it clears the slope, or take a lower one.",
      })
    }
    return found
  })
}

/** The finding for a wall that the room has not. */
export function noSuchWall(task: Task<PlumbingInputs>, path: (string | number)[], wall: number): Finding {
  return {
    code: "no-such-wall",
    severity: "error",
    at: { file: task.at.file, path },
    message: `${task.room.id} has no wall ${wall}.`,
  }
}
