import type { Finding } from "../../kernels/finding.ts"
import { fixed, type Mm, mmText } from "../../kernels/units.ts"
import type { Piece, Quantity, Step, Task, Work } from "../trade.ts"
import { noWork } from "../trade.ts"
import { architravePieces, architraveSets, type SetOfArchitraves } from "./architraves.ts"
import { joineryCautions } from "./cautions.ts"
import type { JoineryInputs } from "./inputs.ts"
import { skirtedLength, skirtingPieces } from "./skirting.ts"

type JoineryTask = Task<JoineryInputs>
type LengthGood = {
  id: string
  name: string
  thickness: Mm
  width: Mm
  lengths: { length: Mm }[]
  material: string
  primed: boolean
}

/** Skirting, architraves, nosings and thresholds of a room as pieces to saw, with quantities, steps and cautions. */
export function joineryWork(task: JoineryTask): Work {
  const { room, job, input } = task
  const skirting = input.skirting === false ? undefined : product(task, input.skirting, "skirting")
  const architrave = input.architrave === false ? undefined : product(task, input.architrave, "architrave")
  const sets = architrave ? architraveSets({ room, width: architrave.width, job }) : []
  const skirtings = skirting
    ? skirtingPieces({
        room,
        product: skirting.id,
        thickness: skirting.thickness,
        longest: longestPiece(skirting, task),
        without: input.without,
        architraves: sets,
        rules: job.rules,
      })
    : []
  const architraves = architrave
    ? architravePieces(sets, { room, product: architrave.id, width: architrave.width, job })
    : []
  const nosings = nosingPieces(task)
  const pieces = [...skirtings, ...architraves, ...nosings]
  return {
    ...noWork(),
    pieces,
    quantities: quantities({ task, skirtings, architraves, nosings, skirting, architrave }),
    steps: steps({ task, skirtings, sets, nosings }),
    cautions: joineryCautions([skirting, architrave].some((good) => good?.material === "mdf")),
    findings: findings({ task, skirting, architrave }),
    rests: rests(pieces),
    results: {
      skirtingRun: skirtedLength(skirtings),
      architraveSets: sets.map(({ door, wall, inside }) => ({
        door,
        wall,
        width: inside.width,
        height: inside.height,
      })),
      thresholds: input.threshold.map(({ door, profile }) => ({ door, profile })),
    },
  }
}

function product(task: JoineryTask, id: string | undefined, use: string): LengthGood | undefined {
  return task.job.product(id ?? task.job.chosen(use), "length")
}

function longestPiece(good: LengthGood, { job }: JoineryTask): Mm {
  const stock = Math.max(...good.lengths.map((each) => each.length)) - 2 * job.rules.value("saw-end-trim")
  return Math.min(stock, job.carry.longest)
}

function nosingPieces(task: JoineryTask): Piece[] {
  const { input, room } = task
  const good = input.nosing ? product(task, input.nosing.product, "nosing") : undefined
  if (!good || !input.nosing) return []
  return input.nosing.lengths.map((length, index) => ({
    mark: `${room.id}-N${index + 1}`,
    trade: "joinery",
    room: room.id,
    product: good.id,
    what: `nosing ${index + 1}`,
    length,
    left: { as: "square", setting: 0 },
    right: { as: "square", setting: 0 },
    mayBeJointed: false,
  }))
}

interface Parts {
  task: JoineryTask
  skirtings: Piece[]
  architraves: Piece[]
  nosings: Piece[]
  skirting?: LengthGood
  architrave?: LengthGood
}

function quantities({ task, skirtings, architraves, nosings, skirting, architrave }: Parts): Quantity[] {
  const { room, job } = task
  const list = [
    lengthsOf(skirtings, skirting, { room: room.id, what: "Skirting" }),
    lengthsOf(architraves, architrave, { room: room.id, what: "Architraves" }),
    lengthsOf(nosings, product(task, task.input.nosing?.product, "nosing"), {
      room: room.id,
      what: "Nosings",
    }),
  ].filter((quantity) => quantity !== null)
  const adhesive = job.chosen("grab-adhesive")
  if (skirtings.length > 0 && adhesive) {
    const run = skirtedLength(skirtings) / 1000
    const tubes = run / job.rules.value("joinery-adhesive-run")
    list.push({
      trade: "joinery",
      room: room.id,
      what: "Grab adhesive",
      product: adhesive,
      net: tubes,
      gross: tubes,
      unit: "nr",
      from: `${fixed(run, 2)} m of skirting at ${job.rules.value("joinery-adhesive-run")} m a tube`,
    })
  }
  return list
}

function lengthsOf(
  pieces: readonly Piece[],
  good: LengthGood | undefined,
  of: { room: string; what: string },
): Quantity | null {
  if (pieces.length === 0 || !good) return null
  const run = skirtedLength(pieces) / 1000
  return {
    trade: "joinery",
    room: of.room,
    what: of.what,
    product: good.id,
    net: run,
    gross: run,
    unit: "m",
    from: `${pieces.length} pieces, cut to the saw sheet`,
  }
}

function steps({
  task,
  skirtings,
  sets,
  nosings,
}: {
  task: JoineryTask
  skirtings: Piece[]
  sets: SetOfArchitraves[]
  nosings: Piece[]
}): Step[] {
  const { room, job, input } = task
  const rule = (id: string) => job.rules.value(id)
  const base = { trade: "joinery", room: room.id, after: [], noisy: true, dusty: true }
  const list: Step[] = []
  if (sets.length > 0) {
    list.push({
      ...base,
      key: `joinery/${room.id}/architraves`,
      title: "Fix architraves",
      detail: `${sets.map((set) => set.door).join(", ")}: margin ${rule("joinery-architrave-margin")} mm all round, fixings every ${rule("joinery-architrave-fixing")} mm.`,
      stage: "second-fix",
      hours: sets.length * rule("joinery-architrave-hours"),
    })
  }
  if (skirtings.length > 0) {
    const run = skirtedLength(skirtings) / 1000
    list.push({
      ...base,
      key: `joinery/${room.id}/skirting`,
      title: "Fix skirting",
      detail: `${fixed(run, 2)} m, scribed to the floor, fixed to the wall only, every stud or ${mmText(rule("joinery-skirting-fixing"))} mm; nothing through the floor.`,
      stage: "second-fix",
      hours: run / rule("joinery-skirting-rate"),
      after: sets.length > 0 ? [`joinery/${room.id}/architraves`] : [],
      hold: "a card slides under the skirting everywhere: the floor is free to move",
    })
  }
  if (input.threshold.length > 0) {
    list.push({
      ...base,
      key: `joinery/${room.id}/thresholds`,
      title: "Fit threshold bars",
      detail: input.threshold.map((each) => `${each.door}: ${each.profile}`).join("; "),
      stage: "second-fix",
      hours: input.threshold.length * rule("joinery-threshold-hours"),
    })
  }
  if (nosings.length > 0) {
    list.push({
      ...base,
      key: `joinery/${room.id}/nosings`,
      title: "Fit nosings",
      detail: `${nosings.length} lengths, glued and screwed to the structure, the floor left free behind them; stair dry and clear by evening.`,
      stage: "nosings",
      hours: nosings.length * rule("joinery-nosing-hours"),
      gate: { process: "adhesive cures", hours: rule("joinery-adhesive-cure"), forbids: ["load"] },
    })
  }
  return list
}

function findings({
  task,
  skirting,
  architrave,
}: Pick<Parts, "task" | "skirting" | "architrave">): Finding[] {
  const { at, input } = task
  const found: Finding[] = []
  if (input.skirting !== false && !skirting) found.push(noProduct(task, "skirting"))
  if (input.architrave !== false && !architrave && task.room.doors.length > 0)
    found.push(noProduct(task, "architrave"))
  if (
    skirting &&
    architrave &&
    skirting.thickness > architrave.thickness &&
    !input.plinths &&
    !input.standsProud
  ) {
    found.push({
      code: "skirting-thicker-than-architrave",
      severity: "warning",
      at,
      message: `Skirting ${skirting.thickness} mm is thicker than the architrave's ${architrave.thickness} mm: its end shows at each door.`,
      mend: "Take a thicker architrave, a thinner skirting, or plinth blocks (plinths: true).",
    })
  }
  return found
}

function noProduct({ at }: JoineryTask, use: string): Finding {
  return {
    code: "no-product-chosen",
    severity: "warning",
    at,
    message: `No product is chosen for ${use}.`,
    mend: `Choose one in products.yaml (chosen: ${use}: ...), or write ${use}: false here.`,
  }
}

function rests(pieces: readonly Piece[]): string[] {
  if (pieces.length === 0) return []
  return [
    "joinery-architrave-margin",
    "joinery-scarf-corner",
    "joinery-scarf-setting",
    "joinery-skirting-fixing",
    "joinery-architrave-fixing",
    "joinery-skirting-rate",
    "joinery-architrave-hours",
    "saw-kerf",
  ]
}
