import type { DoorEntry } from "../../../intake/schema/house.ts"
import type { House, Room } from "../../../survey/room.ts"
import { type RulesRead, readThrough } from "../rules-read.ts"
import type { EscapeRoute } from "./route.ts"
import { metresText, type StoreyHeights } from "./storeys.ts"
import { cupboard, garage, isOpenWay, outside } from "./ways.ts"

/** What guidance asks of one doorway at least. */
export type Minimum = "none" | "FD20" | "FD20-ask" | "FD30S"

/** What guidance asks of a doorway, and why. */
export interface DoorAsk {
  door: string
  minimum: Minimum
  /** In words for a schedule: `FD20 (E 20)`. */
  minimumText: string
  /** Minutes of fire resistance asked, 0 for none. */
  minutes: number
  smoke: boolean
  selfClosing: boolean
  /** One sentence. */
  why: string
  /** Document and paragraph, with how it was read. */
  clause: string
  /** True if it stands in the enclosure of the stair. */
  onStair: boolean
  /** Ids of the rulebook entries it rests on. */
  rests: string[]
  /** A question that building control must answer, if any. */
  question?: string
}

interface HouseCase {
  house: House
  heights: StoreyHeights
  route: EscapeRoute
  rules: RulesRead
}

const loftClause = "Approved Document B vol 1 (2019), 2.21, 2.22 and Table C1, as quoted"
const stairClause = "Approved Document B vol 1 (2019), 2.5 and Table C1, as quoted"
const garageClause = "Approved Document B vol 1 (2019), Table C1 and section 5, as quoted"
const omitClause = "government guidance page on Approved Document B vol 1 (archived), as quoted"

/** What England's guidance asks of a doorway: the garage first, then the stair enclosure; all others nothing. */
export function doorAsk(door: DoorEntry, about: HouseCase): DoorAsk {
  const rules = readThrough(about.rules)
  return { ...asked(door, { ...about, rules }), rests: rules.ids() }
}

type Asked = Omit<DoorAsk, "rests">

function asked(door: DoorEntry, about: HouseCase): Asked {
  const [a, b] = door.between
  if (door.between.includes(garage)) return atGarage(door, about)
  if (door.between.includes(outside)) return toOutside(door)
  if (isOpenWay(door)) return openWay(door, about)
  const inside = [a, b].filter((id) => about.route.stairway.has(id))
  const room = (id: string) => about.house.rooms.find((each) => each.id === id)
  if (inside.length === 2) {
    return nothing(door, "Both sides lie inside the stair enclosure.", clauseFor(about))
  }
  if (inside.length === 0) return offStair(door, about)
  if (about.heights.asks === "open") return lowHouse(door, about)
  const other = a === inside[0] ? b : a
  return onStair(door, room(other), other, about)
}

function nothing(door: DoorEntry, why: string, clause: string): Asked {
  return {
    door: door.id,
    minimum: "none",
    minimumText: "nothing asked",
    minutes: 0,
    smoke: false,
    selfClosing: false,
    why,
    clause,
    onStair: false,
  }
}

function atGarage(door: DoorEntry, { rules, route, heights }: HouseCase): Asked {
  const step = rules.value("door-garage-step")
  const minutes = rules.value("door-garage-minutes")
  const isOnStair = heights.asks !== "open" && door.between.some((id) => route.stairway.has(id))
  const stair = isOnStair ? " It also stands in the stair enclosure, which asks less." : ""
  return {
    door: door.id,
    minimum: "FD30S",
    minimumText: `FD${minutes}S (E ${minutes} Sa), self-closing, opening ${step} above the garage floor`,
    minutes,
    smoke: true,
    selfClosing: true,
    why: `It opens to a garage inside the house: ${minutes} minutes with smoke seal, self-closing, and the opening at least ${step} mm above the garage floor (or a floor that falls outwards).${stair}`,
    clause: garageClause,
    onStair: isOnStair,
  }
}

function toOutside(door: DoorEntry): Asked {
  return door.finalExit
    ? nothing(
        door,
        "It is the final exit: no fire resistance is asked, but it must open from inside without a key.",
        "Approved Document B vol 1 (2019), from memory",
      )
    : nothing(door, "It opens to the open air, not onto the stair.", stairClause)
}

function offStair(door: DoorEntry, about: HouseCase): Asked {
  const uses = door.between.map((id) => about.house.rooms.find((room) => room.id === id))
  const wet = uses.find((room) => room?.use === "bathroom")
  const other = uses.find((room) => room !== wet)
  const why =
    about.route.stairway.size === 0
      ? "No stair leads past it."
      : wet
        ? `It opens from ${wet.name} into ${other?.name ?? "a room"}, not onto the stair enclosure.`
        : "It does not open onto the stair enclosure."
  return nothing(door, why, clauseFor(about))
}

function openWay(door: DoorEntry, about: HouseCase): Asked {
  const [from, to] = door.between.map((id) => about.house.rooms.find((room) => room.id === id)?.name ?? id)
  const off = door.between.some((id) => about.route.stairway.has(id)) ? "" : ", off the stair enclosure"
  return nothing(door, `It is an opening without a leaf between ${from} and ${to}${off}.`, clauseFor(about))
}

function lowHouse(door: DoorEntry, { heights, rules }: HouseCase): Asked {
  const limit = metresText(rules.value("door-escape-storey-limit"))
  return {
    ...nothing(
      door,
      `The highest floor is ${metresText(heights.top.height)} above the lowest ground, not over ${limit}: no protected stair is asked.`,
      stairClause,
    ),
    onStair: true,
  }
}

function onStair(door: DoorEntry, room: Room | undefined, id: string, about: HouseCase): Asked {
  const minutes = about.rules.value("door-stair-minutes")
  const loft = isLoft(about)
  if (loft) about.rules.value("door-loft-stair-minutes")
  const { top } = about.heights
  const height = metresText(top.height)
  const limit = metresText(about.rules.value("door-escape-storey-limit"))
  const from = room?.name ?? (id === cupboard ? "a cupboard" : `room ${id}`)
  const ask: Asked = {
    door: door.id,
    minimum: "FD20",
    minimumText: `FD${minutes} (E ${minutes})`,
    minutes,
    smoke: false,
    selfClosing: false,
    why: `It opens from ${from} onto the stair enclosure, and ${top.storey.name} lies ${height} above the lowest ground, over ${limit}.`,
    clause: clauseFor(about),
    onStair: true,
  }
  const question = questionOf(door, room, id)
  if (!question) return ask
  return {
    ...ask,
    minimum: "FD20-ask",
    minimumText: `FD${minutes} (E ${minutes}) unless building control agrees otherwise`,
    clause: `${ask.clause}; ${omitClause}`,
    question,
  }
}

function questionOf(door: DoorEntry, room: Room | undefined, id: string): string | null {
  if (id === cupboard) {
    return `Door ${door.id}: is the cupboard behind it small and of low risk, so that no fire-resisting leaf is wanted?`
  }
  if (!room) return `Door ${door.id} leads to ${id}, which was not surveyed: what is behind it?`
  if (room.use === "bathroom") {
    return `Door ${door.id}: may ${room.name} be taken into the stair enclosure (its walls to other rooms then carry the 30 minutes) and an ordinary leaf hang there?`
  }
  if (room.use === "cupboard" || room.use === "store") {
    return `Door ${door.id}: is ${room.name} small and of low risk, so that no fire-resisting leaf is wanted?`
  }
  return null
}

/** True if the stair to the highest storey is new: the storey is being made. */
function isLoft({ house, heights }: Pick<HouseCase, "house" | "heights">): boolean {
  return house.stairs.some((stair) => stair.to === heights.top.storey.id && stair.new)
}

function clauseFor(about: HouseCase): string {
  return isLoft(about) ? loftClause : stairClause
}
