import type { Finding } from "../../kernels/finding.ts"
import { dryingHours, dryingProcesses, dryingRests } from "../../rulebook/drying.ts"
import { type Caution, noWork, type Quantity, type Step, type Task, type Work } from "../trade.ts"
import type { PlumbingInputs, Ware } from "./inputs.ts"
import { type HungRadiator, hungRadiators, noSuchWall, radiatorFindings } from "./radiators.ts"

/** Words for a piece of sanitaryware. */
export const wareWords: Record<Ware["kind"], string> = {
  wc: "WC",
  basin: "basin",
  shower: "shower",
  bath: "bath",
  "towel-rail": "towel rail",
  sink: "sink",
}

/** Plumbing of one room: radiators after the white behind them, sanitaryware after the tile has cured, checks. */
export function plumbingWork(task: Task<PlumbingInputs>): Work {
  const radiators = hungRadiators(task)
  const { sanitaryware } = task.input
  if (radiators.length + sanitaryware.length === 0) return noWork()
  return {
    ...noWork(),
    quantities: [...radiatorCounts(task, radiators), ...wareCounts(task)],
    steps: steps(task, radiators),
    cautions: cautions(radiators.length > 0),
    findings: [...radiatorFindings(task, radiators), ...wareFindings(task), ...sealFindings(task)],
    rests: restsOf(task, radiators),
    results: {
      radiators: radiators.map(({ number, radiator, foot, top, tails, tailsOff, hole }) => ({
        number,
        wall: radiator.wall,
        fromLeft: radiator.fromLeft,
        width: radiator.width,
        foot,
        top,
        tails,
        tailsOff,
        hole,
      })),
      sanitaryware: sanitaryware.map(({ kind, wall, fromLeft, width, rim }) => ({
        kind,
        wall,
        fromLeft,
        width,
        rim: rim ?? null,
      })),
    },
  }
}

function radiatorCounts(task: Task<PlumbingInputs>, radiators: HungRadiator[]): Quantity[] {
  const { job, room } = task
  const holes = radiators.reduce((sum, each) => sum + each.tails.length, 0)
  const common = { trade: "plumbing", room: room.id, unit: "nr" as const }
  const hung = radiators.map(({ number, radiator }): Quantity => {
    const product = job.product(radiator.product ?? job.chosen("radiator"), "each")
    const what = `Radiator ${radiator.width} × ${radiator.height}`
    return { ...common, what, product: product?.id ?? null, net: 1, gross: 1, from: `number ${number}` }
  })
  if (holes === 0) return hung
  const collar = job.product(job.chosen("pipe-collar"), "each")
  return [
    ...hung,
    {
      ...common,
      what: "Pipe collars at the floor",
      product: collar?.id ?? null,
      net: holes,
      gross: holes,
      from: "one a pipe",
    },
  ]
}

function wareCounts(task: Task<PlumbingInputs>): Quantity[] {
  return task.input.sanitaryware.map((ware): Quantity => {
    const product = task.job.product(ware.product ?? task.job.chosen(ware.kind), "each")
    return {
      trade: "plumbing",
      room: task.room.id,
      what: wareWords[ware.kind],
      product: product?.id ?? null,
      net: 1,
      gross: 1,
      unit: "nr",
      from: `wall ${ware.wall}`,
    }
  })
}

function steps(task: Task<PlumbingInputs>, radiators: HungRadiator[]): Step[] {
  const out = (id: string) => task.job.rules.value(id)
  const count = radiators.length + task.input.sanitaryware.length
  const toDo = task.input.firstFix === "to-do"
  return [
    step(task, "first-fix", {
      title: toDo ? "First fix pipes, caps on, pressure test" : "Tails checked, caps on, pressure test",
      detail:
        radiators.length > 0
          ? `Tails at their places by the schedule; holes ${holeWords(radiators)} through the floor.`
          : "Tails and wastes at their places by the schedule.",
      stage: "prepare",
      hours: count * out(toDo ? "plumb-out-first-fix" : "plumb-out-check") + out("plumb-out-test"),
      hold: "Pressure held, written on the sheet, before anything is covered.",
      noisy: toDo,
      dusty: toDo,
    }),
    ...(radiators.length > 0 ? radiatorSteps(task, radiators) : []),
    ...(task.input.sanitaryware.length > 0 ? wareSteps(task) : []),
  ]
}

function holeWords(radiators: HungRadiator[]): string {
  return [...new Set(radiators.map((each) => `${each.hole} mm`))].join(", ")
}

function radiatorSteps(task: Task<PlumbingInputs>, radiators: HungRadiator[]): Step[] {
  const { rules } = task.job
  return [
    step(task, "radiators", {
      title: "Hang radiators",
      detail: `${radiators.length} by the schedule, heights from the finished floor. Fill, vent, balance; no leak at any joint.`,
      stage: "heat",
      hours: radiators.length * rules.value("plumb-out-radiator"),
      hold: "White behind each radiator is on and dry before it is hung.",
    }),
    step(task, "heating-on", {
      title: "Heating on, room brought to its steady warmth",
      detail:
        "Steady, gentle warmth; write down air readings morning and evening. No wood comes in before the limits hold.",
      stage: "heat",
      hours: rules.value("plumb-out-test"),
      after: [`plumbing/${task.room.id}/radiators`],
      gate: {
        process: "Room warm and steady, before wood comes in",
        hours: rules.value("plumb-heat-settle"),
        until: "air within the limits on every reading",
        forbids: [],
      },
    }),
  ]
}

function wareSteps(task: Task<PlumbingInputs>): Step[] {
  const { rules, climate } = task.job
  const { sanitaryware } = task.input
  const hours = dryingHours("sealant", climate, rules)
  const { what, next, until, forbids } = dryingProcesses.sealant
  const gate =
    hours === "do not"
      ? {}
      : {
          gate: {
            process: `${what}, before ${next}`,
            hours: Math.ceil(Number(hours.toPrecision(9))),
            until,
            forbids: [...forbids],
          },
        }
  return [
    step(task, "sanitaryware", {
      title: `Fix sanitaryware: ${sanitaryware.map((each) => wareWords[each.kind]).join(", ")}`,
      detail:
        "On cured tile only; drill tile slowly without hammer; connect, run water, look and feel at every joint.",
      stage: "second-fix",
      hours: sanitaryware.length * rules.value("plumb-out-ware"),
      hold: "Grout has had its full time before load and fixings.",
    }),
    step(task, "seal", {
      title: "Seal sanitaryware to tile",
      detail: "Clean and dry joints, bath filled with water before it is sealed; one smooth bead.",
      stage: "second-fix",
      hours: rules.value("plumb-out-test"),
      after: [`plumbing/${task.room.id}/sanitaryware`],
      ...gate,
    }),
    step(task, "leak-check", {
      title: "Last leak check",
      detail: "Fill and empty everything; dry paper under every joint; hot and cold on the right side.",
      stage: "covers-off",
      hours: rules.value("plumb-out-test"),
      hold: "No drop on the paper; foreman signs.",
    }),
  ]
}

function cautions(hasRadiators: boolean): Caution[] {
  const trade = "plumbing"
  return [
    {
      trade,
      id: "hot-work",
      text: "Soldering: no shavings, solvent or insulation near; mat behind the joint, extinguisher by; look again an hour after.",
      why: "Roof timbers smoulder unseen.",
      defer: "The plumber; the fire extinguisher's maker.",
    },
    {
      trade,
      id: "gas",
      text: "Boiler and gas pipes are for a registered gas fitter only.",
      why: "Gas and fumes kill.",
      defer: "A registered gas fitter.",
    },
    {
      trade,
      id: "water-on",
      text: "Water and heat are on again each evening, or the house is told before.",
      why: "People live below.",
      defer: "The foreman.",
    },
    ...(hasRadiators
      ? [
          {
            trade,
            id: "heavy-radiator",
            text: "Two people for a steel radiator; drain it before it is taken off.",
            why: "Weight, and black water on new floors.",
            defer: "The maker's label.",
          },
        ]
      : []),
  ]
}

function wareFindings(task: Task<PlumbingInputs>): Finding[] {
  return task.input.sanitaryware.flatMap((ware, index): Finding[] => {
    const path = [...task.at.path, "sanitaryware", index]
    const wall = task.room.walls.find((each) => each.number === ware.wall)
    if (!wall) return [noSuchWall(task, [...path, "wall"], ware.wall)]
    const right = ware.fromLeft + ware.width
    if (right <= wall.length) return []
    const message = `The ${wareWords[ware.kind]} reaches ${Math.round(right)} mm; wall ${wall.number} is ${Math.round(wall.length)} mm long.`
    return [
      {
        code: "ware-off-wall",
        severity: "error",
        at: { file: task.at.file, path: [...path, "width"] },
        message,
      },
    ]
  })
}

function sealFindings(task: Task<PlumbingInputs>): Finding[] {
  if (task.input.sanitaryware.length === 0) return []
  if (dryingHours("sealant", task.job.climate, task.job.rules) !== "do not") return []
  const { temperature, humidity } = task.job.climate
  const message = `Sealant must not be used at ${temperature} °C and ${humidity} %.`
  return [
    {
      code: "air-outside-range",
      severity: "error",
      at: { file: "job.yaml", path: ["climate"] },
      message,
      mend: "Warm, dry and air the rooms, or wait.",
    },
  ]
}

function restsOf(task: Task<PlumbingInputs>, radiators: HungRadiator[]): string[] {
  const hung =
    radiators.length > 0
      ? ["plumb-radiator-foot", "plumb-tail-beside", "plumb-tail-off", "plumb-heat-settle"]
      : []
  const gap = radiators.length > 0 && task.facts.floorGap === undefined ? ["plumb-pipe-gap"] : []
  return [...hung, ...gap, ...(task.input.sanitaryware.length > 0 ? dryingRests("sealant") : [])]
}

function step(
  task: Task<PlumbingInputs>,
  key: string,
  of: Pick<Step, "title" | "detail" | "stage" | "hours"> & Partial<Step>,
): Step {
  const common = { trade: "plumbing", room: task.room.id, after: [], noisy: false, dusty: false }
  return { ...common, ...of, key: `plumbing/${task.room.id}/${key}` }
}
