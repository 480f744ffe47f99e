import type { Finding } from "../../kernels/finding.ts"
import { dryingHours, dryingRests } from "../../rulebook/drying.ts"
import { type Caution, noWork, type Quantity, type Task, type Work } from "../trade.ts"
import type { PlumbingInputs } from "./inputs.ts"
import { type HungRadiator, hungRadiators, noSuchWall, radiatorFindings } from "./radiators.ts"
import { plumbingSteps, wareWords } from "./steps.ts"

/** Plumbing of one room: radiators after the white behind them, sanitaryware after the tile has cured, checks. */
export function plumbingWork(task: Task<PlumbingInputs>): Work {
  const radiators = hungRadiators(task)
  const { sanitaryware } = task.input
  if (radiators.length + sanitaryware.length === 0) return noWork()
  return {
    ...noWork(),
    quantities: [...radiatorCounts(task, radiators), ...wareCounts(task)],
    steps: plumbingSteps(task, radiators),
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
      text: "Water and heat are on again each evening, or the house is told before; the household knows the stop tap.",
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
      ? ["plumb-radiator-foot", "plumb-tail-beside", "plumb-tail-off", "floor-heating-before"]
      : []
  const gap = radiators.length > 0 && task.facts.floorGap === undefined ? ["plumb-pipe-gap"] : []
  const first = task.input.firstFix === "to-do" ? "plumb-out-first-fix" : "plumb-out-check"
  const out = [first, "plumb-out-test", ...(hung.length > 0 ? ["plumb-out-radiator"] : [])]
  if (task.input.sanitaryware.length > 0) out.push("plumb-out-ware")
  return [...hung, ...gap, ...out, ...(task.input.sanitaryware.length > 0 ? dryingRests("sealant") : [])]
}
