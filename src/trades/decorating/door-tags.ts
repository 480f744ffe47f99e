import type { Block, SheetModel } from "../../kernels/paper.ts"
import type { Room } from "../../survey/room.ts"

/** Tags to a page: cut in half, one for the door and one for the foot of the stair. */
const tagsOnPage = 2

/** Door tags of a room, two to a page: wet, keep out until a day and hour to be written in. */
export function doorTags(room: Room): SheetModel {
  const tags = Array.from({ length: tagsOnPage }, () => tag(room)).flat()
  return {
    kind: "door-tag",
    title: "Door tags",
    purpose: "Cut across the middle; hang on the door and at the foot of the stair.",
    room: room.id,
    trade: "decorating",
    audience: ["trade"],
    hosted: true,
    orientation: "portrait",
    datum: null,
    blocks: tags,
    rests: [],
  }
}

function tag(room: Room): Block[] {
  return [
    { kind: "heading", text: `${room.id} ${room.name}` },
    {
      kind: "warning",
      caption: "Wet: keep out",
      items: ["Do not walk in, touch, close the door or open a window until the day and hour below."],
    },
    { kind: "boxes", caption: "Keep out until", labels: ["Day", "Hour", "What is wet", "Hung by"] },
  ]
}
