import { z } from "zod"
import { productId } from "../../intake/schema/products.ts"
import { id, length, line, smallOrNought, thickness, wallNumber as wall } from "../../intake/schema/values.ts"

/** The deck that a floor is laid on, where it is to be fixed again. */
const deck = z
  .strictObject({
    is: z.enum(["boards", "sheets"]).meta({ description: "Old boards across the joists, or sheets." }),
    thickness: thickness.meta({ description: "Thickness of the deck, mm.", examples: [22] }),
    boardWidth: length.optional().meta({ description: "Width of one old board, mm.", examples: [150] }),
  })
  .meta({ description: "The deck as found." })

/** A movement break across the floor. */
const floorBreak = z
  .strictObject({
    wall: wall.meta({ description: "Wall the break is square to." }),
    fromLeft: length.meta({ description: "Where it meets that wall, mm from the wall's left end." }),
  })
  .meta({
    description: "A movement break: a straight line from a wall across the floor, under a profile.",
    examples: [{ wall: 2, fromLeft: 5010 }],
  })

/** What the author may write for the floor of one room, under `work.floors`. */
export const floorInputs = z
  .strictObject({
    finish: z.enum(["floating-board", "stays", "by-tiler", "none"]).meta({
      description:
        "floating-board: engineered boards over underlay; stays: what lies there stays; by-tiler: tiled; none: bare deck.",
      examples: ["floating-board"],
    }),
    stays: z
      .enum(["carpet", "old"])
      .default("carpet")
      .meta({ description: "What stays, where the finish is 'stays'." }),
    buildUp: smallOrNought.optional().meta({
      description:
        "Thickness over the deck where no floor is laid by this trade, mm; else taken from the products.",
    }),
    board: productId("board")
      .optional()
      .meta({ description: "Product id of the board; else the one chosen for the job." }),
    underlay: productId("roll")
      .optional()
      .meta({ description: "Product id of the underlay; else the one chosen." }),
    oil: productId("liquid").optional().meta({ description: "Product id of the oil; else the one chosen." }),
    along: wall.optional().meta({
      description:
        "Wall the boards run along. Left out: at right angles to the joists if known, else along the longest wall.",
      examples: [2],
    }),
    firstRowFrom: wall.optional().meta({
      description: "Wall the first row lies against; it must run the way of the boards.",
    }),
    gap: thickness.optional().meta({
      description: "Gap at walls and fixed things, mm; else by rule and calculation.",
      examples: [10],
    }),
    into: z
      .array(id)
      .max(20)
      .default([])
      .meta({ description: "Holes and cupboards of the room that the floor runs into, by id." }),
    heldAlong: z.array(wall).max(8).default([]).meta({
      description:
        "Walls along which something fixed to the structure holds the floor fast (a glued nosing).",
    }),
    breaks: z
      .array(floorBreak)
      .max(6)
      .default([])
      .meta({
        description:
          "Movement breaks where the floor is longer or wider than the gap can take: each parts it into fields, with the gap on both sides of the line.",
        examples: [[{ wall: 2, fromLeft: 5010 }]],
      }),
    joints: z
      .enum(["locked", "glued"])
      .default("locked")
      .meta({ description: "How boards join: a locking profile, or tongue and groove glued." }),
    oilCoats: z.number().int().min(0).max(4).default(1).meta({
      description: "Coats of oil after laying (boards oiled in the factory: 1; bare boards: 2).",
    }),
    deckScrews: z.boolean().default(true).meta({ description: "The deck is screwed down again first." }),
    deck: deck.optional().meta({ description: "The deck as found, where it is screwed down again." }),
    note: line.optional().meta({ description: "Anything the floor layer should know." }),
  })
  .meta({ description: "The floor of one room." })
/** What the author wrote for a floor. */
export type FloorInputs = z.infer<typeof floorInputs>
