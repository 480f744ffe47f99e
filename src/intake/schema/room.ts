import { z } from "zod"
import {
  day,
  headLine,
  id,
  length,
  lengthOrNought,
  line,
  measured,
  refersTo,
  text,
  thickness,
  wallNumber,
} from "./values.ts"

/** One run of the outline, walked clockwise. */
export const run = z
  .strictObject({
    length,
    turn: z.union([z.enum(["right", "left"]), z.number().min(-180).max(180)]).meta({
      description:
        "Turn at the end of this run: right or left for about 90 degrees, or the turn as measured in degrees (right positive).",
    }),
    is: z.enum(["wall", "breast", "wardrobe", "open-edge", "knee-wall"]).default("wall").meta({
      description:
        "What stands there: a wall, a chimney breast's face, a wardrobe front, an open edge, a dwarf wall under a slope.",
    }),
    name: line.optional(),
  })
  .meta({ description: "One run of the outline, left to right as you face it from inside." })

/** A diagonal or other check length between two corners. */
export const diagonal = z
  .strictObject({ from: wallNumber, to: wallNumber, length })
  .meta({ description: "Check length between two corners; corner n is the left end of wall n." })

/** A hole in the floor (stair well, column), or a cupboard taken out of the floor, placed from two walls. */
export const hole = z
  .strictObject({
    id,
    name: line,
    wall: wallNumber.meta({ description: "The wall it is placed from." }),
    fromLeft: lengthOrNought,
    off: lengthOrNought.meta({ description: "Clear distance from that wall, mm." }),
    width: length.meta({ description: "Along that wall, mm." }),
    depth: length.meta({ description: "Away from that wall, mm." }),
    floored: z
      .boolean()
      .meta({ description: "true: the floor runs through (an open wardrobe); false: no floor there." }),
  })
  .meta({ description: "A hole in the floor, a column, or a cupboard standing in the room." })

/** A slope of the ceiling rising from a dwarf wall. */
export const slope = z
  .strictObject({
    wall: wallNumber,
    dwarf: lengthOrNought.meta({
      description: "Height of the wall under the slope, from the room's datum, mm.",
    }),
    pitch: z.number().min(5).max(85).meta({ description: "Pitch in degrees from level." }),
    along: length.optional().meta({ description: "Length taped up the slope to the flat, mm (a check)." }),
  })
  .meta({ description: "A sloping ceiling rising from a wall." })

/** A purlin, bulkhead or beam below the ceiling; with its place it is taken out of the ceiling over it. */
export const obstacle = z
  .strictObject({
    name: line,
    height: length.meta({ description: "Its underside, from the room's datum, mm." }),
    wall: wallNumber
      .optional()
      .meta({ description: "The wall it is placed from, where its place was taped." }),
    fromLeft: lengthOrNought.default(0),
    off: lengthOrNought.default(0).meta({ description: "Clear distance from that wall, mm." }),
    width: length.optional().meta({ description: "Along that wall, mm; left out: the whole wall." }),
    depth: length.optional().meta({ description: "Away from that wall, mm." }),
  })
  .meta({ description: "A purlin, bulkhead or beam below the ceiling." })

/** The ceiling: level at one or more heights, sloping from some walls. */
export const ceiling = z
  .strictObject({
    heights: z
      .array(length.meta({ slip: { below: 300 } }))
      .min(1)
      .max(20)
      .meta({ description: "Height of the level part at one or more points, from the room's datum, mm." }),
    slopes: z.array(slope).max(8).default([]),
    dormers: z
      .array(
        z.strictObject({
          wall: wallNumber.meta({ description: "The dwarf wall of the slope it stands in." }),
          fromLeft: lengthOrNought,
          width: length,
          height: length.meta({ description: "Its own level ceiling, from the room's datum, mm." }),
        }),
      )
      .max(8)
      .default([]),
    obstacles: z.array(obstacle).max(20).default([]).meta({
      description: "Purlins, bulkheads and the like below the ceiling, with height from the datum.",
    }),
    section: z
      .strictObject({
        flat: lengthOrNought.optional().meta({
          description: "Width of the level ceiling square across the slopes, mm (0 if they meet).",
        }),
        floor: length.optional().meta({ description: "Width of the floor square across the slopes, mm." }),
      })
      .optional()
      .meta({
        description:
          "Widths taped square across one slope or two opposite ones: checks on pitch and heights.",
      }),
  })
  .meta({ description: "Level and sloping parts of the ceiling." })

/** Where a doorway of house.yaml stands in this room. */
export const doorHere = z
  .strictObject({
    door: refersTo("door"),
    wall: wallNumber,
    fromLeft: lengthOrNought.meta({
      description: "Left end of the wall to the near side of the opening, mm.",
    }),
  })
  .meta({ description: "A doorway of house.yaml, placed in this room." })

/** A window, roof window or hatch. */
export const windowHere = z
  .strictObject({
    id,
    name: line.optional(),
    kind: z.enum(["window", "roof-window", "hatch"]),
    wall: wallNumber.meta({ description: "Its wall; for a roof window the wall its slope rises from." }),
    fromLeft: lengthOrNought,
    width: length,
    height: length.meta({ description: "Height; up the slope for a roof window, mm." }),
    sill: lengthOrNought.meta({
      description:
        "Bottom edge from the room's datum; up the slope from the dwarf wall for a roof window, mm.",
    }),
    reveal: lengthOrNought.default(0).meta({ description: "Depth of plastered or lined reveal, mm." }),
  })
  .meta({ description: "A window, roof window or hatch." })

/** A pipe, cable or other thing in the floor or wall that must not be fixed into. */
export const hidden = z
  .strictObject({
    what: z.enum(["pipe", "cable", "flue", "unknown"]),
    in: z.enum(["floor", "wall"]),
    wall: wallNumber,
    fromLeft: lengthOrNought,
    to: lengthOrNought.optional(),
    note: line.optional(),
  })
  .meta({ description: "What is hidden: no fixing within its zone." })

/** A moisture or air reading. */
export const reading = z
  .strictObject({
    on: day,
    what: z.enum(["deck", "board", "air-temperature", "air-humidity", "plaster"]),
    value: z.number().min(-30).max(100),
    instrument: line,
    place: line.optional(),
  })
  .meta({ description: "A reading with its date and instrument." })

/** `rooms/<id>.yaml`: one room as measured, and what each trade does in it. */
export const roomFile = z
  .strictObject({
    id,
    name: headLine(48),
    storey: refersTo("storey"),
    use: z.enum([
      "bedroom",
      "study",
      "bathroom",
      "landing",
      "hall",
      "store",
      "living",
      "kitchen",
      "cupboard",
    ]),
    measured,
    entry: id.meta({ description: "The doorway, hatch or opening that wall 1 holds." }),
    outline: z
      .array(run)
      .min(3)
      .max(60)
      .meta({ description: "Runs walked clockwise seen from above, beginning with wall 1." }),
    diagonals: z.array(diagonal).max(100).default([]),
    holes: z.array(hole).max(20).default([]),
    ceiling,
    doors: z.array(doorHere).max(20).default([]),
    windows: z.array(windowHere).max(40).default([]),
    joists: z
      .strictObject({
        wall: wallNumber.meta({ description: "The wall they run along." }),
        centres: length.optional(),
        firstFrom: lengthOrNought.optional().meta({ description: "That wall to the first joist, mm." }),
      })
      .optional()
      .meta({ description: "Joists under this room, if known; unknown prints 'scan first'." }),
    hidden: z.array(hidden).max(60).default([]),
    readings: z.array(reading).max(200).default([]),
    photos: z
      .array(z.strictObject({ number: z.number().int().positive(), of: line }))
      .max(200)
      .default([]),
    wallBuild: thickness.optional(),
    stays: z.array(line).max(20).default([]).meta({ description: "What stays and must be protected." }),
    work: z
      .record(z.string(), z.unknown())
      .default({})
      .meta({ description: "What each trade does here: one key a trade." }),
    notes: z.array(text).max(20).default([]),
  })
  .meta({
    id: "room",
    title: "rooms/*.yaml",
    description: "One room as measured and what each trade does in it.",
  })
export type RoomFile = z.infer<typeof roomFile>
