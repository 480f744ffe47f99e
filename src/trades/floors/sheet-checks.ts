import { fixed, mmText } from "../../kernels/units.ts"
import type { Task } from "../trade.ts"
import type { FloorInputs } from "./inputs.ts"
import { oilFullDays, oilGate } from "./oil.ts"
import type { FloorPlan } from "./plan-floor.ts"
import { buildUpUndercut } from "./steps.ts"

/** What to check and write under the floor, before boards are laid. */
export function underChecks(task: Task<FloorInputs>, plan: FloorPlan): { text: string; write?: string }[] {
  const { rules } = task.job
  const { deck } = plan
  const base = task.room.storey.base
  return [
    {
      text: `Heating on and room weathertight for ${rules.value("floor-heating-before")} working days`,
      write: "since",
    },
    { text: "Wet trades done, air within limits" },
    ...(deck
      ? [
          { text: "Scanned for pipes and cables; zones marked on the deck" },
          {
            text: `Deck screwed down: ${deck.screws} screws ${deck.screwLength} long (${deck.from}), none in a marked zone, no squeak`,
          },
        ]
      : []),
    {
      text: `Flat within ${rules.value("floor-flatness")} mm under a ${rules.value("floor-flatness-straightedge") / 1000} m straightedge, all ways`,
    },
    ...(base === "ventilated-timber" ? [{ text: "Air bricks clear, void below dry" }] : []),
    ...(base === "concrete"
      ? [{ text: "Moisture layer under the floor, laps taped, turned up at walls" }]
      : []),
    {
      text: `Boards in the room ${rules.value("floor-acclimatise")} h, flat, closed`,
      write: "from, to",
    },
    {
      text: `Underlay: ${plan.underlayTake.strips} strips at right angles to the boards, ${plan.underlay.foil ? "foil up, " : ""}${fixed(plan.underlayTake.joints, 1)} m of joints taped, turned up ${rules.value("floor-vapour-upstand")} mm at walls`,
    },
    { text: `Linings undercut by ${buildUpUndercut(task, plan)} mm; board goes under, gap behind` },
    { text: "Batch numbers written here", write: "batches" },
  ]
}

/** What may not be fixed through a floating floor, and hidden things that no deck screw may meet. */
export function notThrough(task: Task<FloorInputs>): string[] {
  const hidden = task.room.hidden
    .filter((each) => each.in === "floor")
    .map(
      (each) =>
        `No deck screw: ${each.what} in the floor at wall ${each.wall}, ${mmText(each.fromLeft)}${each.to === undefined ? "" : ` to ${mmText(each.to)}`} mm from its left end${each.note ? ` (${each.note})` : ""}.`,
    )
  return [
    "Door stops, thresholds and profiles: fix to the deck in the gap, or glue to one side only.",
    "Wardrobe tracks, fitted cupboards, newels, pans: stand them on the deck or cut the floor round them with the gap.",
    "Stair nosings: never glue to the floor and to the stair both.",
    "Skirting and architrave: fix to the wall, never down into the boards.",
    `Pipes: hole = pipe and two gaps.`,
    ...(task.input.heldAlong.length > 0
      ? [`Held along wall ${task.input.heldAlong.join(", ")} only: the whole movement goes the other way.`]
      : []),
    ...hidden,
  ]
}

/** What to check and write when the floor is laid. */
export function laidChecks(task: Task<FloorInputs>, plan: FloorPlan): { text: string; write?: string }[] {
  return [
    { text: `Spacers out; gap ${mmText(plan.movement.gap)} mm free all round, left empty` },
    { text: "Gap free at linings, pipes, breast and hearth" },
    ...plan.breaks.map(({ number }) => ({
      text: `Break ${number}: gap free on both sides, profile fixed to the deck alone`,
    })),
    { text: "Covered with breathing board or paper, taped to itself" },
    ...(task.input.oilCoats > 0
      ? [
          {
            text: `Oiled, ${task.input.oilCoats} coat${task.input.oilCoats === 1 ? "" : "s"}; ${oilWaits(task)}`,
            write: "date, time",
          },
          {
            text: `Re-oil where it is walked on ${task.job.rules.value("floor-oil-refresh")} months after, then yearly`,
            write: "first due",
          },
          { text: "Oily rags hung out singly or soaked in a lidded tin" },
        ]
      : []),
    { text: "Sealed packs and left boards counted; batch, room and date written on them", write: "number" },
  ]
}

function oilWaits(task: Task<FloorInputs>): string {
  const walk = oilGate(task, true)
  const full = oilFullDays(task)
  if (!walk || full === null) return "not in the planned air"
  return `nobody in for ${walk.hours} h, no rugs or water for ${full} days at the planned air`
}
