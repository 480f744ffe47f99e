import type { House } from "../../../survey/room.ts"
import type { RulesRead } from "../rules-read.ts"
import type { EscapeRoute } from "./route.ts"
import { cupboard } from "./ways.ts"

/** One thing besides the leaves that closes the stair enclosure off. */
export interface EnclosureItem {
  where: string
  what: string
  do: string
}

/** What else encloses a protected stair: lights over doors, soffits, cupboards, hatches, walls and holes in them. */
export function enclosureItems(house: House, route: EscapeRoute, rules: RulesRead): EnclosureItem[] {
  const minutes = rules.value("door-enclosure-minutes")
  const inStairway = (id: string) => route.stairway.has(id)
  const rooms = house.rooms.filter((room) => inStairway(room.id))
  const walls = rooms.map((room) => ({
    where: room.id,
    what: `Walls and ceiling of ${room.name} to rooms beside and under it`,
    do: `${minutes} minutes all through; look for openings, thin panels and pipes or cables that pass, and stop them.`,
  }))
  const lights = house.doors
    .filter((door) => door.light && door.between.some(inStairway))
    .map((door) => ({
      where: door.id,
      what: `Glazed light over ${door.name}`,
      do: "Ordinary glass does not hold: fire-resisting glass in a tested frame, or board it over as the wall; ask building control.",
    }))
  const soffits = house.stairs
    .filter((stair) => inStairway(stair.fromRoom))
    .map((stair) => ({
      where: stair.fromRoom,
      what: `Underside of ${stair.name}, where a cupboard or room lies under it`,
      do: `Lined to ${minutes} minutes on the cupboard's side.`,
    }))
  const cupboards = house.doors
    .filter((door) => door.between.some(inStairway) && door.between.some(isCupboard(house)))
    .map((door) => ({
      where: door.id,
      what: `Cupboard behind ${door.name}`,
      do: "Walls and leaf as the enclosure, unless building control takes it as small and of low risk; nothing stored that burns.",
    }))
  const hatches = rooms.flatMap((room) =>
    room.windows
      .filter((each) => each.kind === "hatch")
      .map((hatch) => ({
        where: room.id,
        what: `Hatch ${hatch.id} in ${room.name}`,
        do: "A hatch in the enclosure is part of it: fire-resisting, kept shut, or moved out of it.",
      })),
  )
  return [...lights, ...soffits, ...cupboards, ...hatches, ...walls]
}

function isCupboard(house: House): (id: string) => boolean {
  return (id) =>
    id === cupboard ||
    house.rooms.some((room) => room.id === id && (room.use === "cupboard" || room.use === "store"))
}
