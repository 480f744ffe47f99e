import { fixed, mmText } from "../../kernels/units.ts"
import type { Piece, Step, Task } from "../trade.ts"
import type { SetOfArchitraves } from "./architraves.ts"
import type { JoineryInputs } from "./inputs.ts"
import { skirtedLength } from "./skirting.ts"
import { stairSteps } from "./stairs/steps.ts"
import type { ThresholdBar } from "./thresholds.ts"

/** What the steps of a room are made from. */
export interface Cut {
  task: Task<JoineryInputs>
  skirtings: readonly Piece[]
  sets: readonly SetOfArchitraves[]
  nosings: readonly Piece[]
  trims: readonly Piece[]
  made: readonly Piece[]
  bars: readonly ThresholdBar[]
}

/** Second fix in order: architraves and trims, then skirting against them, what is made on site, thresholds; nosings and stair last. */
export function joinerySteps(cut: Cut): Step[] {
  return [
    ...architraveStep(cut),
    ...trimStep(cut),
    ...skirtingStep(cut),
    ...madeStep(cut),
    ...thresholdStep(cut),
    ...stairSteps(cut.task),
    ...nosingStep(cut),
  ]
}

type Drafted = Pick<Step, "title" | "detail" | "stage" | "hours"> & Partial<Step>

function drafted({ task }: Cut, key: string, of: Drafted): Step {
  const { room } = task
  return {
    trade: "joinery",
    room: room.id,
    key: stepKey(room.id, key),
    after: [],
    noisy: true,
    dusty: true,
    ...of,
  }
}

function stepKey(room: string, key: string): string {
  return `joinery/${room}/${key}`
}

function architraveStep(cut: Cut): Step[] {
  const { sets, task } = cut
  if (sets.length === 0) return []
  const rule = (id: string) => task.job.rules.value(id)
  const plinths = task.input.plinths ? " Plinth blocks first, legs on them." : ""
  return [
    drafted(cut, "architraves", {
      title: "Fix architraves",
      detail: `${sets.map((set) => set.door).join(", ")}: margin ${rule("joinery-architrave-margin")} mm all round, fixings every ${rule("joinery-architrave-fixing")} mm.${plinths}`,
      stage: "second-fix",
      hours: sets.length * rule("joinery-architrave-hours"),
    }),
  ]
}

function trimStep(cut: Cut): Step[] {
  const { trims, task } = cut
  if (trims.length === 0) return []
  const openings = task.input.trims.map((trim) => trim.opening)
  return [
    drafted(cut, "trims", {
      title: "Fix trims round windows and hatches",
      detail: `${openings.join(", ")}: mitred, margin ${task.job.rules.value("joinery-architrave-margin")} mm; glue the mitres.`,
      stage: "second-fix",
      hours: openings.length * task.job.rules.value("joinery-architrave-hours"),
    }),
  ]
}

function skirtingStep(cut: Cut): Step[] {
  const { skirtings, sets, task } = cut
  if (skirtings.length === 0) return []
  const { room, job } = task
  const run = skirtedLength(skirtings) / 1000
  return [
    drafted(cut, "skirting", {
      title: "Fix skirting",
      detail: `${fixed(run, 2)} m, undercoated and sawn ends sealed first; scribed to the floor, fixed to the wall only, every stud or ${mmText(job.rules.value("joinery-skirting-fixing"))} mm; nothing through the floor.`,
      stage: "second-fix",
      hours: run / job.rules.value("joinery-skirting-rate"),
      after: sets.length > 0 ? [stepKey(room.id, "architraves")] : [],
      hold: "a card slides under the skirting everywhere: the floor is free to move",
    }),
  ]
}

function madeStep(cut: Cut): Step[] {
  const { made, task } = cut
  if (made.length === 0) return []
  const whats = [...new Set(task.input.made.map((each) => each.name ?? each.what))]
  return [
    drafted(cut, "made", {
      title: "Make and fix fitted parts",
      detail: `${whats.join(", ")}: ${made.length} pieces as on the joinery sheet; frames fixed at most ${mmText(task.job.rules.value("joinery-frame-centres"))} mm apart.`,
      stage: "second-fix",
      hours: made.length * task.job.rules.value("joinery-made-hours"),
    }),
  ]
}

function thresholdStep(cut: Cut): Step[] {
  const { bars, task } = cut
  if (bars.length === 0) return []
  return [
    drafted(cut, "thresholds", {
      title: "Fit threshold bars",
      detail: bars.map((bar) => `${bar.door}: ${mmText(bar.length)}, ${bar.profile}`).join("; "),
      stage: "second-fix",
      hours: bars.length * task.job.rules.value("joinery-threshold-hours"),
    }),
  ]
}

function nosingStep(cut: Cut): Step[] {
  const { nosings, task } = cut
  if (nosings.length === 0) return []
  const { rules } = task.job
  return [
    drafted(cut, "nosings", {
      title: "Fit nosings",
      detail: `${nosings.length} lengths, glued and screwed to the structure, the floor left free behind them; stair dry and clear by evening.`,
      stage: "nosings",
      hours: nosings.length * rules.value("joinery-nosing-hours"),
      after: stairSteps(task)
        .filter((step) => step.key.includes("/guarding-"))
        .map((step) => step.key),
      gate: { process: "adhesive cures", hours: rules.value("joinery-adhesive-cure"), forbids: ["load"] },
    }),
  ]
}
