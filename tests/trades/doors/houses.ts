import type { Product } from "../../../src/intake/schema/products.ts"
import { doors } from "../../../src/trades/doors/index.ts"
import type { JobFacts, RoomFacts } from "../../../src/trades/trade.ts"
import { houseOf, jobFacts, rulesOf, surveyed } from "../../fixtures/rooms.ts"

/** A house written short for tests. */
export interface ShortHouse {
  lowestGround?: number
  /** Decks of the storeys from the lowest up: g, f, s, t. */
  decks: number[]
  /** `id use storey-index`, e.g. `B1 bedroom 1`. */
  rooms: string[]
  /** `id lowerRoom upperRoom [new]`. */
  stairs?: string[]
  /** `id from to [final] [open] [light]`; the leaf swings into the second room. */
  doors: string[]
  work?: Record<string, Record<string, unknown>>
  windows?: Record<string, unknown[]>
  passed?: Record<string, RoomFacts>
  products?: Product[]
  chosen?: Record<string, string>
}

/** Rulebook of the doors trade for tests. */
export const doorRules = rulesOf(doors.rules)

/** What the doors trade may read of a house written short. */
export function jobOf(short: ShortHouse): JobFacts {
  const storeys = short.decks.map((deck, n) => ({
    id: `s${n}`,
    name: `Storey ${n}`,
    deck,
    finishNow: 0,
    base: "timber",
  }))
  const rooms = short.rooms.map((each) => each.split(" "))
  const storeyOf = (id: string) => `s${rooms.find((room) => room[0] === id)?.[2] ?? 0}`
  const house = houseOf({
    lowestGround: short.lowestGround ?? -150,
    storeys,
    stairs: (short.stairs ?? []).map((each) => {
      const [id, fromRoom, toRoom, isNew] = each.split(" ") as [string, string, string, string?]
      const ends = { fromRoom, toRoom, from: storeyOf(fromRoom), to: storeyOf(toRoom) }
      return {
        id,
        name: `Stair ${id}`,
        ...ends,
        risers: 13,
        rise: 200,
        going: 230,
        width: 800,
        new: isNew === "new",
      }
    }),
    doors: short.doors.map((each) => {
      const [id, from, to, ...more] = each.split(" ") as [string, string, string, ...string[]]
      const isOpen = more.includes("open")
      return {
        id,
        name: `Door ${id}`,
        between: [from, to],
        ...(isOpen ? {} : { swingsInto: to, hinges: "left" }),
        lining: isOpen ? "none" : "keep",
        lengthsTo: "lining",
        heightsFrom: "finished-floor",
        widths: [768, 768, 768],
        heights: [1992, 1992, 1992],
        wall: 108,
        light: more.includes("light"),
        finalExit: more.includes("final"),
        work: short.work?.[id] ?? {},
      }
    }),
  })
  return jobFacts({
    house,
    rules: doorRules,
    rooms: rooms.map(([id, use, storey]) =>
      surveyed(
        { id, name: `${use} ${id}`, use, storey: `s${storey}`, windows: short.windows?.[id!] ?? [] },
        house,
      ),
    ),
    ...(short.passed ? { passed: short.passed } : {}),
    ...(short.products ? { products: short.products } : {}),
    ...(short.chosen ? { chosen: short.chosen } : {}),
  })
}

/** Products for tests (invented). */
export const products: Product[] = [
  leafProduct("fd30", { width: 762, height: 1981, thickness: 44, mass: 40, fire: "30", trim: [3, 3, 0, 20] }),
  leafProduct("plain-686", {
    width: 686,
    height: 1981,
    thickness: 35,
    mass: 23,
    fire: "none",
    trim: [5, 5, 2, 10],
  }),
  leafProduct("plain-762", {
    width: 762,
    height: 1981,
    thickness: 35,
    mass: 18,
    fire: "none",
    trim: [5, 5, 2, 10],
  }),
  lengthProduct("lining-108", 32, 108),
  lengthProduct("stop-12", 12, 32),
]

function leafProduct(
  id: string,
  given: {
    width: number
    height: number
    thickness: number
    mass: number
    fire: "none" | "30"
    trim: [number, number, number, number]
  },
): Product {
  const [hinge, lock, head, foot] = given.trim
  return {
    ...given,
    id,
    name: `${given.thickness} x ${given.width} x ${given.height} leaf`,
    kind: "leaf",
    supplier: "joinery merchant",
    lead: 10,
    core: "solid",
    trim: { hinge, lock, head, foot },
    face: "oak",
    price: "100.00",
  }
}

function lengthProduct(id: string, thickness: number, width: number): Product {
  return {
    id,
    name: id,
    kind: "length",
    supplier: "timber merchant",
    lead: 3,
    thickness,
    width,
    material: "softwood",
    primed: false,
    lengths: [{ length: 2400, price: "10.00" }],
  }
}
