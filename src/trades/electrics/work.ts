import { roundHalfUp } from "../../kernels/units.ts"
import { type Caution, noWork, type Quantity, type Step, type Task, type Work } from "../trade.ts"
import type { ElectricsInputs, PointKind } from "./inputs.ts"
import { heightRule, pointFindings, pointWords, type ScheduledPoint, scheduledPoints } from "./points.ts"

/** Electrics of one room: points counted and placed, visits in order; no circuit is designed. */
export function electricsWork(task: Task<ElectricsInputs>): Work {
  const points = scheduledPoints(task)
  if (points.length === 0) return noWork()
  return {
    ...noWork(),
    quantities: counts(task, points),
    steps: visits(task, points),
    cautions: cautions(task),
    findings: pointFindings(task, points),
    rests: restsOf(task, points),
    results: {
      points: points.map(({ number, point, height, fromDatum, zone }) => ({
        number,
        kind: point.kind,
        on: point.on,
        wall: point.wall,
        fromLeft: point.fromLeft,
        height,
        fromDatum: fromDatum === null ? null : roundHalfUp(fromDatum, 0),
        gang: point.gang,
        is: point.is,
        zone,
      })),
    },
  }
}

/** New and moved points by kind; what stays is not bought. */
function counts(task: Task<ElectricsInputs>, points: ScheduledPoint[]): Quantity[] {
  const bought = points.filter(({ point }) => point.is === "new")
  const kinds = [...new Set(bought.map(({ point }) => key(point)))]
  return kinds.map((each) => {
    const same = bought.filter(({ point }) => key(point) === each)
    const { kind, gang } = same[0]!.point
    const product = task.job.product(task.job.chosen(kind), "each")
    return {
      trade: "electrics",
      room: task.room.id,
      what: gang > 1 ? `${pointWords[kind]}, ${gang} gang` : pointWords[kind],
      product: gang > 1 ? null : (product?.id ?? null),
      net: same.length,
      gross: same.length,
      unit: "nr",
      from: `numbers ${same.map(({ number }) => number).join(", ")} of the points schedule`,
    }
  })
}

function key({ kind, gang }: { kind: PointKind; gang: number }): string {
  return `${kind}/${gang}`
}

/** The electrician's visits to the room: before the first coat, to fit, to ease plates for the last coat, and to close up. */
function visits(task: Task<ElectricsInputs>, points: ScheduledPoint[]): Step[] {
  const out = (id: string) => task.job.rules.value(id)
  const plates = points.filter(({ point }) => point.on === "wall").length
  const alarms = points.filter(({ point }) => point.kind.endsWith("alarm")).length
  const toDo = task.input.firstFix === "to-do"
  const each = toDo ? out("elec-out-first-fix") : out("elec-out-check")
  const dead = `Isolated and proved dead by ${task.input.isolatedBy}, who alone puts the supply on again.`
  return [
    step(task, "first-coat", {
      title: toDo
        ? "First fix, boxes at height, ends made safe"
        : "First fix checked, boxes at height, ends made safe",
      detail: `${points.length} points by the schedule. Old plates off, boxes masked.${alarms > 0 ? " Alarms that are there stay up and working until the new one is on, the same day." : ""} ${dead}`,
      stage: "prepare",
      hours: out("elec-out-visit") + points.length * each,
      hold: "Heights checked from the finished floor, not from the deck.",
      noisy: toDo,
      dusty: toDo,
    }),
    step(task, "fit", {
      title: "Electrical second fix",
      detail: `Fit ${points.length} points, test.${alarms > 0 ? " A new alarm works from the moment it is up; covered only while dust flies." : ""} ${dead}`,
      stage: "second-fix",
      hours: out("elec-out-visit") + points.length * out("elec-out-fit"),
    }),
    ...(plates > 0
      ? [
          step(task, "ease", {
            title: "Ease plates for the last coat",
            detail: `${plates} plates eased off the wall. ${dead} The supply stays off while they hang loose.`,
            stage: "last-coat",
            hours: out("elec-out-visit") + plates * out("elec-out-ease"),
          }),
        ]
      : []),
    step(task, "close-up", {
      title: "Plates back, supply on, tests written down",
      detail:
        alarms > 0
          ? "No cover left on any alarm of the room; each sounded by its button. All together: see the last step of the house."
          : "Tests and their numbers on the sheet.",
      stage: "covers-off",
      hours: out("elec-out-visit") + plates * out("elec-out-ease"),
      hold: "Test papers handed to the foreman.",
    }),
  ]
}

function cautions(task: Task<ElectricsInputs>): Caution[] {
  const trade = "electrics"
  return [
    {
      trade,
      id: "isolate",
      text: `Only ${task.input.isolatedBy} isolates, proves dead with an approved tester, locks off and puts on again. Nobody else loosens a plate.`,
      why: "Live ends kill.",
      defer: "The electrician.",
    },
    {
      trade,
      id: "no-circuits",
      text: "This sheet marks places and counts points. Circuits, cables, protection and zones are the electrician's design.",
      why: "It is licensed work; new circuits and work in wet rooms are notified.",
      defer: "The registered electrician; building control.",
    },
    ...(task.room.hidden.some((each) => each.what === "cable")
      ? [
          {
            trade,
            id: "hidden-cable",
            text: "Hidden cables are marked in this room: scan before any drill, screw or nail.",
            why: "Cables run where the marks say and perhaps elsewhere.",
            defer: "The electrician.",
          },
        ]
      : []),
  ]
}

function restsOf(task: Task<ElectricsInputs>, points: ScheduledPoint[]): string[] {
  const byRule = points
    .filter((each) => each.byRule && each.height !== null)
    .map(({ point }) => heightRule(point.kind))
  const alarm = points.some(({ point }) => point.kind.endsWith("alarm")) ? ["elec-alarm-from-wall"] : []
  const wet =
    task.room.use === "bathroom" || (task.facts.wetPlaces ?? []).length > 0
      ? ["elec-wet-zone-height", "elec-wet-zone-two", "elec-wet-socket"]
      : []
  const first = task.input.firstFix === "to-do" ? "elec-out-first-fix" : "elec-out-check"
  const out = [first, "elec-out-fit", "elec-out-ease", "elec-out-visit"]
  return [
    ...new Set(["elec-lowest", "elec-highest", "elec-from-opening", ...byRule, ...alarm, ...wet, ...out]),
  ]
}

function step(
  task: Task<ElectricsInputs>,
  key: string,
  of: Pick<Step, "title" | "detail" | "stage" | "hours"> & Partial<Step>,
): Step {
  const common = { trade: "electrics", room: task.room.id, after: [], noisy: false, dusty: false }
  return { ...common, ...of, key: `electrics/${task.room.id}/${key}` }
}
