import type { Room } from "../../src/survey/room.ts"
import { houseOf, surveyed } from "../fixtures/rooms.ts"

/** Seeded figures between 0 and 1 (mulberry32). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296
  }
}

type Run = { length: number; turn: string | number }

/** Rooms as people meet them: plain, L, breast, bay, splay, small cupboards; slopes, dormers, doors, windows, pipes, joists. */
export function generatedRoom(seed: number): Room {
  const random = seeded(seed)
  const from = (least: number, most: number) => Math.round(least + random() * (most - least))
  const chance = (share: number) => random() < share
  const [wide, deep] = chance(0.15)
    ? [from(700, 1200), from(600, 1100)]
    : [from(2400, 6500), from(2200, 5200)]
  const outline = outlineOf(from(0, 4), wide, deep, from)
  const sloped = chance(0.5) && outline.length === 4
  const height = from(2200, 2700)
  const doors = Array.from({ length: chance(0.3) ? 2 : 1 }, (_, index) => ({
    door: `D${index + 1}`,
    wall: 1,
    fromLeft: index === 0 ? from(0, Math.max(0, wide - 1700)) : Math.max(0, wide - 800),
  }))
  const house = houseOf({
    doors: ["D1", "D2"].map((id) => ({
      id,
      name: id,
      between: ["outside", "R1"],
      swingsInto: chance(0.7) ? "R1" : "outside",
      hinges: chance(0.5) ? "left" : "right",
      lining: "keep",
      lengthsTo: "lining",
      heightsFrom: "deck",
      widths: [from(610, 850)],
      heights: [from(1950, 2050)],
      wall: from(75, 300),
    })),
  })
  return surveyed(
    {
      outline,
      diagonals: [],
      ceiling: {
        heights: [height],
        slopes: sloped ? [{ wall: 3, dwarf: from(500, 1400), pitch: from(30, 55) }] : [],
        dormers:
          sloped && wide > 2400 ? [{ wall: 3, fromLeft: 300, width: 1200, height: from(1900, height) }] : [],
        obstacles: chance(0.2) ? [{ name: "beam", height: from(1900, 2100), wall: 2, depth: 250 }] : [],
      },
      doors,
      windows: [
        ...(sloped
          ? [
              {
                id: "RW1",
                kind: "roof-window",
                wall: 3,
                fromLeft: Math.max(0, wide - 900),
                width: 780,
                height: 1180,
                sill: 300,
              },
            ]
          : []),
        ...(chance(0.6)
          ? [
              {
                id: "W1",
                kind: "window",
                wall: 2,
                fromLeft: from(0, 300),
                width: from(500, 900),
                height: 900,
                sill: from(700, 1000),
                reveal: 120,
              },
            ]
          : []),
      ],
      holes:
        chance(0.3) && deep > 2000
          ? [
              {
                id: "h1",
                name: "wardrobe",
                wall: 2,
                fromLeft: 200,
                off: 0,
                width: from(600, 1200),
                depth: 600,
                floored: chance(0.5),
              },
            ]
          : [],
      hidden: [
        ...(chance(0.5)
          ? [{ what: "pipe", in: "floor", wall: 2, fromLeft: from(100, 600), to: from(700, 1200) }]
          : []),
        ...(chance(0.5) ? [{ what: "cable", in: "wall", wall: 1, fromLeft: from(50, wide - 50) }] : []),
      ],
      ...(chance(0.4) ? { joists: { wall: 1, centres: 400, firstFrom: 60 } } : {}),
    },
    house,
  )
}

function outlineOf(
  kind: number,
  wide: number,
  deep: number,
  from: (least: number, most: number) => number,
): Run[] {
  const side = (length: number, turn: string | number = "right"): Run => ({ length, turn })
  if (wide < 2400 || kind === 0) return [side(wide), side(deep), side(wide), side(deep)]
  if (kind === 1) {
    const [legWide, legDeep] = [from(900, wide - 900), from(700, deep - 700)]
    return [
      side(wide),
      side(deep),
      side(legWide),
      side(legDeep, "left"),
      side(wide - legWide),
      side(deep - legDeep),
    ]
  }
  if (kind === 2) {
    const breast = from(700, 1500)
    const left = from(200, wide - breast - 200)
    const out = from(150, 450)
    return [
      side(wide),
      side(deep),
      side(left),
      side(out, "left"),
      side(breast, "left"),
      side(out),
      side(wide - left - breast),
      side(deep),
    ]
  }
  const out = from(250, 600)
  const cheek = Math.round(out * Math.SQRT2)
  if (kind === 3) {
    const rest = (wide - 900 - 2 * out) / 2
    const flank = Math.round(rest)
    return [
      side(wide),
      side(deep),
      side(flank, -45),
      side(cheek, 45),
      side(900, 45),
      side(cheek, -45),
      side(wide - 900 - 2 * out - flank),
      side(deep),
    ]
  }
  return [side(wide), side(deep - out, 45), side(cheek, 45), side(wide - out), side(deep)]
}
