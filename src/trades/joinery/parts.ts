import type { Mm } from "../../kernels/units.ts"
import { roundHalfUp } from "../../kernels/units.ts"
import type { WindowInRoom } from "../../survey/room.ts"
import type { EndCut, Piece, Task } from "../trade.ts"
import type { JoineryInputs } from "./inputs.ts"
import type { ThresholdBar } from "./thresholds.ts"

type JoineryTask = Task<JoineryInputs>

const square: EndCut = { as: "square", setting: 0 }
const mitre: EndCut = { as: "internal-mitre", setting: 45 }

/** Letters for the marks of what is made on site. */
const letters: Record<JoineryInputs["made"][number]["what"], string> = {
  "bath panel": "B",
  boxing: "X",
  "wardrobe frame": "W",
  shelf: "H",
  other: "M",
}

/** Nosings of a room, one piece a length. */
export function nosingPieces({ input, room, job }: JoineryTask): Piece[] {
  const good = job.product(input.nosing?.product ?? job.chosen("nosing"), "length")
  if (!good || !input.nosing) return []
  return input.nosing.lengths.map((length, index) =>
    piece(room.id, { mark: `N${index + 1}`, product: good.id, what: `nosing ${index + 1}`, length }),
  )
}

/** Threshold bars as pieces; a bar without a product is on the schedule only. */
export function thresholdPieces(bars: readonly ThresholdBar[], room: string): Piece[] {
  return bars.flatMap(({ door, wall, product, length, profile }) =>
    product === undefined
      ? []
      : [
          piece(room, {
            mark: `${door}-T`,
            product,
            what: `threshold bar, ${door}: ${profile}`,
            length,
            wall,
          }),
        ],
  )
}

/** Pieces of what is made on site: bath panel, boxing, wardrobe frames, shelves. */
export function madePieces({ input, room, job }: JoineryTask): Piece[] {
  const counts = new Map<string, number>()
  return input.made.flatMap(({ what, name, wall, product, lengths }) => {
    if (!job.product(product, "length")) return []
    return lengths.map((length) => {
      const letter = letters[what]
      const number = (counts.get(letter) ?? 0) + 1
      counts.set(letter, number)
      const place = wall === undefined ? "" : `${wall}-`
      return piece(room.id, {
        mark: `${place}${letter}${number}`,
        product,
        what: name === undefined ? what : `${what}, ${name}`,
        length,
        ...(wall === undefined ? {} : { wall }),
      })
    })
  })
}

/**
 * Trims mitred round windows, roof windows and hatches: long points are the opening with a margin and the trim's width at both ends.
 * Three sides stand on a sill board, their feet square.
 */
export function trimPieces({ input, room, job }: JoineryTask): Piece[] {
  const margin = job.rules.value("joinery-architrave-margin")
  return input.trims.flatMap(({ opening, product, sides }) => {
    const window = room.windows.find((each) => each.id === opening)
    const good = job.product(product ?? trimProduct(input, job), "length")
    if (!window || !good) return []
    return trimOf(window, sides ?? (window.kind === "window" ? 3 : 4), {
      margin,
      width: good.width,
      product: good.id,
      room: room.id,
    })
  })
}

interface TrimGood {
  margin: Mm
  width: Mm
  product: string
  room: string
}

function trimProduct(input: JoineryInputs, job: JoineryTask["job"]): string | undefined {
  return input.architrave === false
    ? job.chosen("architrave")
    : (input.architrave ?? job.chosen("architrave"))
}

function trimOf(window: WindowInRoom, sides: 3 | 4, good: TrimGood): Piece[] {
  const { margin, width, product, room } = good
  const across = window.width + 2 * (margin + width)
  const up = window.height + (sides === 3 ? 1 : 2) * (margin + width)
  const foot = sides === 3 ? square : mitre
  const shortUp = up - (sides === 3 ? width : 2 * width)
  const base = { product, wall: window.wall }
  const named = (letter: string, what: string, length: Mm, shortPoint: Mm, ends: [EndCut, EndCut]) => ({
    ...piece(room, {
      ...base,
      mark: `${window.wall}-${window.id}${letter}`,
      what: `trim, ${what}, ${window.id}`,
      length,
    }),
    shortPoint: roundHalfUp(shortPoint, 1),
    left: ends[0],
    right: ends[1],
  })
  const head = named("H", "head", across, across - 2 * width, [mitre, mitre])
  const leftLeg = named("L", "left side", up, shortUp, [foot, mitre])
  const rightLeg = named("R", "right side", up, shortUp, [mitre, foot])
  const bottom = sides === 3 ? [] : [named("F", "foot", across, across - 2 * width, [mitre, mitre])]
  return [leftLeg, head, rightLeg, ...bottom]
}

function piece(
  room: string,
  of: { mark: string; product: string; what: string; length: Mm; wall?: number },
): Piece {
  const { mark, wall, ...rest } = of
  return {
    mark: `${room}-${mark}`,
    trade: "joinery",
    room,
    ...(wall === undefined ? {} : { wall }),
    ...rest,
    length: roundHalfUp(of.length, 1),
    left: square,
    right: square,
    mayBeJointed: false,
  }
}
