import { z } from "zod"
import {
  datum,
  day,
  face,
  id,
  length,
  lengthOrNought,
  level,
  line,
  refersTo,
  smallOrNought,
  text,
  thickness,
} from "./values.ts"

/** One storey: its deck and what lies on it now. */
export const storey = z
  .strictObject({
    id,
    name: line,
    deck: level.meta({
      description: "Top of the bare deck, mm above the ground floor's finished level (0).",
    }),
    finishNow: smallOrNought.meta({
      description: "Thickness of what lies on the deck now and stays, mm (0 if bare).",
    }),
    base: z
      .enum(["timber", "ventilated-timber", "concrete"])
      .meta({ description: "What the deck rests on; a ventilated timber floor must be able to breathe." }),
    joists: z
      .strictObject({
        alongWallOf: refersTo("room")
          .optional()
          .meta({ description: "Room whose wall the joists run along." }),
        wall: z.number().int().positive().optional(),
        centres: length.optional(),
        firstFrom: lengthOrNought.optional(),
      })
      .optional()
      .meta({ description: "Joist direction and centres, if known; unknown prints 'scan first'." }),
  })
  .meta({ description: "One storey of the house." })

/** One stair between two storeys. */
export const stair = z
  .strictObject({
    id,
    name: line,
    from: refersTo("storey").meta({ description: "Lower storey." }),
    to: refersTo("storey").meta({ description: "Upper storey." }),
    fromRoom: refersTo("room"),
    toRoom: refersTo("room"),
    risers: z.number().int().min(1).max(30),
    rise: length,
    going: length,
    width: length,
    winders: z.number().int().min(0).max(8).default(0),
    new: z.boolean(),
    openEdge: lengthOrNought.default(0).meta({ description: "Length of open edge to be guarded, mm." }),
  })
  .meta({ description: "A stair: rises as built, deck to deck." })

/** What a doorway may lead to that is no room of the job. */
export const beyond = ["outside", "garage", "cupboard"] as const

/** One doorway between two rooms (or a room and outside), measured, with what is to hang in it. */
export const door = z
  .strictObject({
    id,
    name: line,
    between: z.tuple([refersTo("room-or-beyond"), refersTo("room-or-beyond")]).meta({
      description:
        "The two rooms it joins; 'outside' for the open air, 'garage' for a garage, 'cupboard' for a cupboard that is no room of its own.",
    }),
    swingsInto: refersTo("room-or-beyond")
      .optional()
      .meta({ description: "The room its leaf swings into; none for an opening without a leaf." }),
    hinges: z
      .enum(["left", "right"])
      .optional()
      .meta({ description: "Side of the hinges, seen from where the knuckles show." }),
    lining: z
      .enum(["new", "keep", "replace", "none"])
      .meta({ description: "new: to be made; keep: lining stays; replace: comes out; none: open way." }),
    lengthsTo: face,
    heightsFrom: datum,
    widths: z
      .array(length.meta({ slip: { below: 100 } }))
      .min(1)
      .max(3)
      .meta({ description: "Width between linings (or studs), top, middle, bottom, mm." }),
    heights: z
      .array(length.meta({ slip: { below: 300 } }))
      .min(1)
      .max(3)
      .meta({ description: "Height, left, middle, right, mm." }),
    wall: thickness.meta({ description: "Finished wall thickness, mm.", slip: { below: 20 } }),
    rebate: thickness.optional().meta({ description: "Depth of rebate or stop face in a kept lining, mm." }),
    plumb: smallOrNought.default(0).meta({ description: "Out of plumb over the height, mm." }),
    twist: smallOrNought.optional().meta({
      description: "Twist of the lining, mm: how far its two legs are out of one plane at the foot or head.",
    }),
    leafNow: line.optional().meta({ description: "What hangs there now." }),
    light: z.boolean().default(false).meta({ description: "A glazed light stands over the door." }),
    finalExit: z.boolean().default(false),
    work: z.looseObject({}).default({}).meta({ description: "What is to be hung, by the doors trade." }),
    note: text.optional(),
  })
  .meta({ description: "A doorway and what hangs in it." })
export type DoorEntry = z.infer<typeof door>

/** `house.yaml`: storeys, stairs, doorways. */
export const houseFile = z
  .strictObject({
    lowestGround: level.meta({
      description: "Lowest ground beside the house, mm from the ground floor's finished level.",
    }),
    built: z
      .number()
      .int()
      .min(1000)
      .max(2100)
      .optional()
      .meta({ description: "Year built, if known; decides on old-paint cautions." }),
    storeys: z.array(storey).min(1).max(8),
    stairs: z.array(stair).max(20).default([]),
    doors: z.array(door).max(200).default([]),
    occupied: z.boolean().meta({ description: "People live in the house during the work." }),
    surveyed: z.strictObject({ on: day, by: line }),
  })
  .meta({ id: "house", title: "house.yaml", description: "Storeys, stairs and doorways of the house." })
export type HouseFile = z.infer<typeof houseFile>
