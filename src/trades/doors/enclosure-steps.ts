import type { House } from "../../survey/room.ts"
import type { Step } from "../trade.ts"
import type { Escape } from "./escape/escape.ts"
import type { RulesRead } from "./rules-read.ts"

/**
 * What closes the stair off besides the leaves, as work: each glazed light over a door onto it, then a walk round it with
 * every gap stopped. Nothing where no enclosure is asked.
 */
export function enclosureSteps(house: House, { enclosure, route, asks }: Escape, rules: RulesRead): Step[] {
  const [lowest] = house.rooms
    .filter((each) => route.stairway.has(each.id))
    .sort((a, b) => a.storey.deck - b.storey.deck)
  const room = lowest?.id
  if (enclosure.length === 0 || room === undefined) return []
  const onStair = house.doors.filter((door) => asks.get(door.id)?.onStair)
  const lights = onStair
    .filter((door) => door.light)
    .map((door): Step => {
      const home = door.between.find((id) => house.rooms.some((each) => each.id === id))!
      return {
        key: `doors/${door.id}/light`,
        trade: "doors",
        room: home,
        title: `Door ${door.id}: close the light over it`,
        detail:
          "Fire-resisting glass in a tested frame, or boarded over as the wall, as building control has agreed; gaps to the wall stopped.",
        stage: "hang",
        hours: rules.value("door-hours-light"),
        after: [`doors/${door.id}/lining`],
        noisy: true,
        dusty: true,
      }
    })
  const walk: Step = {
    key: "doors/house/enclosure",
    trade: "doors",
    room,
    title: "Walk round the stair enclosure",
    detail:
      "By the list on the escape sheet: gaps round linings, pipes and cables stopped with what is tested for it; lights over doors closed; hatches and cupboards shut off.",
    stage: "snag",
    hours: rules.value("door-hours-enclosure"),
    after: [
      ...onStair.flatMap((door) => [`doors/${door.id}/hang`, `doors/${door.id}/gaps`]),
      ...lights.map((step) => step.key),
    ],
    hold: "No gap is left open in the enclosure; each is written on the escape sheet.",
    noisy: false,
    dusty: false,
  }
  return [...lights, walk]
}
