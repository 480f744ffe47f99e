import type { Finding } from "../../kernels/finding.ts"
import { fixed, roundHalfUp } from "../../kernels/units.ts"
import { dryingForbidden, dryingProcesses } from "../../rulebook/drying.ts"
import { noWork, type Quantity, type Step, type Task, type Work } from "../trade.ts"
import { decoratingCautions } from "./cautions.ts"
import { type CoatLine, paintName } from "./coats.ts"
import { coldestToCoat } from "./dew-point.ts"
import type { DecoratingInputs } from "./inputs.ts"
import { decoratingRests } from "./rests.ts"
import { type RoomPaint, roomPaint } from "./room-paint.ts"
import { beadLength } from "./room-steps.ts"
import { decoratingSteps } from "./steps.ts"

/** Decorating of one room: coats, litres, steps with their gates, cautions; what cannot be is a finding. */
export function decoratingWork(task: Task<DecoratingInputs>): Work {
  const paint = roomPaint(task)
  const { lines } = paint
  if (lines.length === 0) return noWork()
  const steps = decoratingSteps(task, lines)
  return {
    ...noWork(),
    quantities: quantitiesOf(task, lines),
    steps,
    cautions: decoratingCautions(task, lines),
    findings: [...missingPaint(task, lines), ...accentFindings(task), ...airFindings(task, lines, steps)],
    rests: decoratingRests(task, paint),
    results: resultsOf(paint),
  }
}

function quantitiesOf(task: Task<DecoratingInputs>, lines: CoatLine[]): Quantity[] {
  const waste = 1 + task.job.rules.value("decor-waste") / 100
  const byPaint = new Map<string, CoatLine[]>()
  for (const line of lines) {
    const key = line.product?.id ?? `none/${line.missing}`
    byPaint.set(key, [...(byPaint.get(key) ?? []), line])
  }
  const paint = [...byPaint.values()].map((same): Quantity => {
    const net = same.reduce((sum, line) => sum + line.paint, 0)
    const { product } = same[0]!
    return {
      trade: "decorating",
      room: task.room.id,
      what: product ? paintName(product) : same[0]!.coat.name,
      product: product?.id ?? null,
      net,
      gross: net * waste,
      unit: "l",
      from: coatsIn(same),
    }
  })
  const bead = beadLength(lines)
  if (bead === 0) return paint
  return [...paint, caulk(task, bead)]
}

function caulk(task: Task<DecoratingInputs>, length: number): Quantity {
  return {
    trade: "decorating",
    room: task.room.id,
    what: "Caulk, bead of trim to wall",
    product: null,
    net: length,
    gross: length,
    unit: "m",
    from: "skirting, architraves and other trim",
  }
}

function coatsIn(lines: CoatLine[]): string {
  const keys = [...new Set(lines.map((line) => line.coat.key))]
  return keys
    .map((key) => {
      const coat = lines.filter((line) => line.coat.key === key)
      const area = coat.reduce((sum, line) => sum + line.area, 0)
      const parts = coat[0]!.coat.mist ? " of mix, thinned" : ""
      return `${coat[0]!.coat.name}: ${fixed(area, 2)} m² at ${coat[0]!.rate} m²/l${parts}`
    })
    .join("; ")
}

function missingPaint(task: Task<DecoratingInputs>, lines: CoatLine[]): Finding[] {
  const uses = [...new Set(lines.flatMap((line) => line.missing ?? []))]
  return uses.map((use) => ({
    code: "no-paint-chosen",
    severity: "warning",
    at: task.at,
    message: `No product is chosen for "${use}" in ${task.room.id}; its litres are not ordered.`,
    mend: `Name a product under products.${use} here, or "${use}" under chosen in products.yaml.`,
  }))
}

function accentFindings(task: Task<DecoratingInputs>): Finding[] {
  const walls = new Set(task.room.walls.map((wall) => wall.number))
  return task.input.accents.flatMap((accent, index): Finding[] => {
    const at = { file: task.at.file, path: [...task.at.path, "accents", index] }
    if (!walls.has(accent.wall)) {
      return [
        {
          code: "no-such-wall",
          severity: "error",
          at: { ...at, path: [...at.path, "wall"] },
          message: `${task.room.id} has no wall ${accent.wall}.`,
        },
      ]
    }
    if (accent.product) return []
    const message = `"${accent.colour}" on wall ${accent.wall} has no product, so its litres count as the wall colour's.`
    return [
      {
        code: "colour-without-product",
        severity: "warning",
        at,
        message,
        mend: "Give the accent its own product.",
      },
    ]
  })
}

/** Air and surfaces in which a coat must not be put on. */
function airFindings(task: Task<DecoratingInputs>, lines: CoatLine[], steps: Step[]): Finding[] {
  const { climate, rules } = task.job
  const plaster = steps.some((step) => step.key.endsWith("/plaster-dry"))
  const processes = new Set([
    ...lines.map((line) => line.process),
    "caulk" as const,
    ...(plaster ? ["skim" as const] : []),
  ])
  const barred = [...processes].flatMap((process): Finding[] => {
    const why = dryingForbidden(process, climate, rules)
    if (!why) return []
    const message = `${dryingProcesses[process].what} must not be used at ${climate.temperature} °C and ${climate.humidity} %: ${why}.`
    return [
      {
        code: "air-outside-range",
        severity: "error",
        at: { file: "job.yaml", path: ["climate"] },
        message,
        mend: "Warm, dry and air the rooms, or wait.",
      },
    ]
  })
  const least = coldestToCoat(climate, rules)
  const coldest = task.input.coldestSurface
  if (coldest === undefined || coldest >= least) return barred
  const at = { file: task.at.file, path: [...task.at.path, "coldestSurface"] }
  const message = `A surface at ${coldest} °C must not be coated: in this air it must be ${fixed(Math.ceil(least * 10) / 10, 1)} °C or more.`
  return [
    ...barred,
    {
      code: "surface-near-dew-point",
      severity: "warning",
      at,
      message,
      mend: "Warm the surface or dry the air, and read again.",
    },
  ]
}

function resultsOf({ surfaces, wood, lines }: RoomPaint): Record<string, unknown> {
  return {
    surfaces: surfaces.map(({ name, state, colour, gross, off, area }) => ({
      name,
      state,
      colour,
      gross: roundHalfUp(gross, 3),
      openings: roundHalfUp(off, 3),
      area: roundHalfUp(area, 3),
    })),
    woodwork: wood.map(({ what, length, girth, area, billed }) => ({
      what,
      length: roundHalfUp(length, 3),
      girth: roundHalfUp(girth, 0),
      area: roundHalfUp(area, 3),
      billed,
    })),
    coats: lines.map(({ coat, surface, area, rate, paint, water, product, colour }) => ({
      coat: coat.name,
      surface,
      area: roundHalfUp(area, 3),
      rate,
      litres: roundHalfUp(paint, 3),
      water: roundHalfUp(water, 3),
      product: product?.id ?? null,
      colour,
    })),
  }
}
