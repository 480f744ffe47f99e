import type { Point } from "../../../src/kernels/polygon/point.ts"
import type { Region } from "../../../src/kernels/polygon/region.ts"

/** A seeded stream of numbers in [0, 1). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32
  }
}

/** A whole number from low to high, both included. */
export function whole(random: () => number, low: number, high: number): number {
  return low + Math.floor(random() * (high - low + 1))
}

/** A generated figure: rectilinear or oblique, with or without holes, corners in whole mm, walked either way round. */
export function generatedRegion(random: () => number): Region {
  const region = random() < 0.5 ? rectilinear(random) : oblique(random)
  return random() < 0.5 ? region : { ...region, outline: [...region.outline].reverse() }
}

/** Columns of different heights above and below a common line: always simple. */
function rectilinear(random: () => number): Region {
  const columns = whole(random, 1, 6)
  const upper: Point[] = []
  const lower: Point[] = []
  const holes: Point[][] = []
  let x = whole(random, -3000, 3000)
  for (let column = 0; column < columns; column++) {
    const next = x + whole(random, 200, 3000)
    const top = whole(random, 400, 4000)
    const bottom = -whole(random, 400, 4000)
    upper.push({ x, y: top }, { x: next, y: top })
    lower.push({ x, y: bottom }, { x: next, y: bottom })
    if (random() < 0.3) holes.push(boxRing(x + 50, -300, next - 50, 300))
    x = next
  }
  return { outline: withoutRepeats([...upper, ...lower.reverse()]), holes }
}

/** Corners at rising angles round a middle: always simple, seldom square. */
function oblique(random: () => number): Region {
  const corners = whole(random, 5, 14)
  const middle = { x: whole(random, -5000, 5000), y: whole(random, -5000, 5000) }
  const step = (2 * Math.PI) / corners
  const outline = Array.from({ length: corners }, (_, index) => {
    const angle = step * (index + 0.3 * random())
    const radius = whole(random, 1500, 6000)
    return {
      x: Math.round(middle.x + radius * Math.cos(angle)),
      y: Math.round(middle.y + radius * Math.sin(angle)),
    }
  })
  const hole = boxRing(middle.x - 150, middle.y - 200, middle.x + 250, middle.y + 130)
  return { outline, holes: random() < 0.5 ? [hole] : [] }
}

function boxRing(left: number, bottom: number, right: number, top: number): Point[] {
  return [
    { x: left, y: bottom },
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
  ]
}

function withoutRepeats(points: Point[]): Point[] {
  return points.filter((point, index) => {
    const before = points[(index + points.length - 1) % points.length]!
    return point.x !== before.x || point.y !== before.y
  })
}
