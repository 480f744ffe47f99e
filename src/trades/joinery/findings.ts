import type { At, Finding } from "../../kernels/finding.ts"
import { type Mm, mmText } from "../../kernels/units.ts"
import type { Task } from "../trade.ts"
import type { SetOfArchitraves } from "./architraves.ts"
import type { JoineryInputs } from "./inputs.ts"

type JoineryTask = Task<JoineryInputs>

/** What the findings of a room look at. */
export interface Looked {
  task: JoineryTask
  skirting: { thickness: number } | undefined
  architrave: { thickness: number } | undefined
  sets: readonly SetOfArchitraves[]
  /** Stretches of wall too short for a piece of skirting. */
  slivers: readonly { wall: number; length: Mm }[]
  /** Marks of every piece, also of those sawn already. */
  marks: readonly string[]
}

/** What is wrong or doubtful in a room's joinery; whether skirting covers the floor's gap is found where the floor is laid. */
export function joineryFindings(looked: Looked): Finding[] {
  const { task, skirting, architrave } = looked
  const { input, room } = task
  const found: Finding[] = []
  if (input.skirting !== false && !skirting) found.push(noProduct(task, "skirting"))
  if (input.architrave !== false && !architrave && room.doors.length > 0)
    found.push(noProduct(task, "architrave"))
  return [
    ...found,
    ...standsProud(looked),
    ...tightArchitraves(looked),
    ...tooShort(looked),
    ...unknownNames(looked),
  ]
}

function standsProud({ task, skirting, architrave, sets }: Looked): Finding[] {
  const { input, at } = task
  if (!skirting || !architrave || sets.length === 0 || input.plinths || input.standsProud) return []
  if (skirting.thickness <= architrave.thickness) return []
  return [
    {
      code: "skirting-thicker-than-architrave",
      severity: "warning",
      at,
      message: `Skirting ${skirting.thickness} mm is thicker than the architrave's ${architrave.thickness} mm: its end shows at each door.`,
      mend: "Take a thicker architrave, a thinner skirting, or plinth blocks (plinths: true).",
    },
  ]
}

/** Legs that reach past the end of their wall, or into the leg of the next doorway. */
function tightArchitraves({ task, sets }: Looked): Finding[] {
  const { room, at } = task
  return sets.flatMap((set): Finding[] => {
    const wall = room.walls.find((each) => each.number === set.wall)
    if (!wall) return []
    const over = Math.max(-set.outerFrom, set.outerTo - wall.length)
    const next = sets.find(
      (other) =>
        other !== set &&
        other.wall === set.wall &&
        other.outerFrom >= set.outerFrom &&
        other.outerFrom < set.outerTo,
    )
    const list: Finding[] = []
    if (over > 1)
      list.push(
        tooWide(
          at,
          set,
          `its leg reaches ${mmText(over)} mm past the end of the wall`,
          "Rip that leg down, and scribe it to the wall.",
        ),
      )
    if (next)
      list.push(
        tooWide(
          at,
          set,
          `its leg meets that of ${next.door} by ${mmText(set.outerTo - next.outerFrom)} mm`,
          "Rip both legs down alike, or run one board between.",
        ),
      )
    return list
  })
}

/** Stretches beside an architrave or a corner where the board of the next wall leaves next to nothing. */
function tooShort({ task, slivers }: Looked): Finding[] {
  return slivers.map(({ wall, length }) => ({
    code: "skirting-too-short",
    severity: "note",
    at: task.at,
    message: `Skirting, wall ${wall} of ${task.room.id}: ${length < 1 ? "nothing is" : `only ${mmText(length)} mm are`} left for it beside the board of the next wall; no piece is sawn.`,
    mend: "Run the next wall's board up to the architrave, and fill what is left with caulk or a slip fixed to the wall.",
  }))
}

function tooWide(at: At, { door, wall }: SetOfArchitraves, message: string, mend: string): Finding {
  return {
    code: "architrave-too-wide",
    severity: "warning",
    at,
    message: `Architrave of ${door}, wall ${wall}: ${message}.`,
    mend,
  }
}

function unknownNames({ task, marks }: Looked): Finding[] {
  const { input, room, at, job } = task
  const windows = room.windows.map((window) => window.id)
  const doors = room.doors.map(({ door }) => door.id)
  const stairs = job.house.stairs.filter((stair) => stair.toRoom === room.id || stair.fromRoom === room.id)
  return [
    ...input.trims.flatMap(({ opening }, index) =>
      windows.includes(opening)
        ? []
        : [
            unknown(
              at,
              ["trims", index, "opening"],
              `No window or hatch ${opening} stands in ${room.id}.`,
              windows,
            ),
          ],
    ),
    ...input.threshold.flatMap(({ door }, index) =>
      doors.includes(door)
        ? []
        : [unknown(at, ["threshold", index, "door"], `Doorway ${door} does not stand in ${room.id}.`, doors)],
    ),
    ...input.stairs.flatMap(({ stair }, index) =>
      stairs.some((each) => each.id === stair)
        ? []
        : [
            unknown(
              at,
              ["stairs", index, "stair"],
              `No stair ${stair} comes to ${room.id}.`,
              stairs.map((each) => each.id),
            ),
          ],
    ),
    ...input.sawn.flatMap((mark, index) =>
      marks.includes(mark)
        ? []
        : [unknown(at, ["sawn", index], `No piece of ${room.id} bears the mark ${mark}.`, [])],
    ),
    ...notSoldInLengths(task),
  ]
}

/** Parts whose product is not sold in lengths cannot be put on the saw. */
function notSoldInLengths({ input, at, job }: JoineryTask): Finding[] {
  const named = [
    ...input.made.map((each, index) => ({ path: ["made", index, "product"], product: each.product })),
    ...input.stairs.flatMap(({ parts }, index) =>
      parts.map((part, place) => ({
        path: ["stairs", index, "parts", place, "product"],
        product: part.product,
      })),
    ),
  ]
  return named
    .filter(({ product }) => !job.product(product, "length"))
    .map(({ path, product }) => unknown(at, path, `Product ${product} is not sold in lengths.`, []))
}

function unknown(at: At, path: (string | number)[], message: string, known: readonly string[]): Finding {
  return {
    code: "joinery-unknown-name",
    severity: "error",
    at: { ...at, path: [...at.path, ...path] },
    message,
    ...(known.length > 0 && { expected: known.join(", ") }),
    mend: "Correct the name.",
  }
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
