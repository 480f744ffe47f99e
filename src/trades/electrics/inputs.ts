import { z } from "zod"
import { lengthOrNought, line, wallNumber } from "../../intake/schema/values.ts"

/** Kinds of point, as they are counted. */
export const pointKind = z.enum([
  "socket",
  "switch",
  "spur",
  "pull-cord",
  "light",
  "fan",
  "smoke-alarm",
  "heat-alarm",
  "data",
])
export type PointKind = z.infer<typeof pointKind>

const point = z
  .strictObject({
    kind: pointKind.meta({ description: "What it is.", examples: ["socket"] }),
    on: z
      .enum(["wall", "slope", "ceiling"])
      .default("wall")
      .meta({
        description: "On the wall, on the slope over it, or on the level ceiling before it.",
        examples: ["wall"],
      }),
    wall: wallNumber.meta({
      description: "Wall number; for a ceiling point the wall it is measured from.",
      examples: [2],
    }),
    fromLeft: lengthOrNought.meta({
      description: "Left end of the wall to the centre, mm.",
      examples: [1200],
    }),
    height: lengthOrNought.optional().meta({
      description: "Finished floor to the centre, mm; else by rule. For a ceiling point left out.",
      examples: [450],
    }),
    off: lengthOrNought.optional().meta({
      description: "For a ceiling or slope point: from the wall to the centre, mm.",
      examples: [900],
    }),
    gang: z
      .number()
      .int()
      .min(1)
      .max(6)
      .default(1)
      .meta({ description: "Gangs in one plate.", examples: [2] }),
    is: z
      .enum(["new", "stays", "moves"])
      .default("new")
      .meta({
        description: "New, stays as it is, or moves here.",
        examples: ["new"],
      }),
    note: line.optional().meta({ description: "What it serves.", examples: ["two-way with the landing"] }),
  })
  .meta({ description: "One electrical point." })
export type Point = z.infer<typeof point>

/** What the author may write for electrics in one room, under `work.electrics`. */
export const electricsInputs = z
  .strictObject({
    points: z.array(point).max(100).default([]).meta({ description: "Points by wall." }),
    firstFix: z
      .enum(["done", "to-do"])
      .default("done")
      .meta({
        description: "Whether boxes and cables are already in.",
        examples: ["done"],
      }),
    isolatedBy: line.default("the electrician").meta({
      description: "Who isolates, as a role.",
      examples: ["the electrician"],
    }),
  })
  .meta({ description: "Electrical points of one room: marked and counted, no circuits designed." })
export type ElectricsInputs = z.infer<typeof electricsInputs>
