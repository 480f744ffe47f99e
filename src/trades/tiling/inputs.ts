import { z } from "zod"
import { productId } from "../../intake/schema/products.ts"
import {
  length,
  lengthOrNought,
  line,
  smallOrNought,
  thickness,
  wallNumber,
} from "../../intake/schema/values.ts"

const tiledWall = z
  .strictObject({
    wall: wallNumber.meta({ description: "Wall number.", examples: [2] }),
    from: lengthOrNought
      .default(0)
      .meta({ description: "Left end of the wall to the tiling, mm.", examples: [0] }),
    to: length.optional().meta({
      description: "Left end of the wall to where it stops, mm; else the wall's right end.",
      examples: [1540],
    }),
    foot: lengthOrNought
      .default(0)
      .meta({ description: "Finished floor to its lower edge, mm.", examples: [0] }),
    top: length.meta({ description: "Finished floor to its upper edge, mm.", examples: [2000] }),
    rows: z
      .enum(["full-at-top", "full-at-foot", "centred"])
      .default("full-at-top")
      .meta({
        description: "Where whole rows begin.",
        examples: ["full-at-top"],
      }),
  })
  .meta({ description: "A tiled part of one wall." })
export type TiledWall = z.infer<typeof tiledWall>

/** What the author may write for tiling in one room, under `work.tiling`. */
export const tilingInputs = z
  .strictObject({
    floor: z
      .boolean()
      .default(false)
      .meta({ description: "The floor is tiled.", examples: [true] }),
    floorBuildUp: thickness.optional().meta({
      description: "Deck to the top of the tile, mm; else tile, bed and board.",
      examples: [13],
    }),
    board: smallOrNought
      .default(0)
      .meta({ description: "Tile backer board under the floor tile, mm.", examples: [6] }),
    walls: z.array(tiledWall).max(40).default([]).meta({ description: "Tiled parts of walls." }),
    joint: thickness
      .optional()
      .meta({ description: "Joint between tiles, mm; else by rule.", examples: [3] }),
    products: z
      .strictObject({
        floorTile: productId("tile")
          .optional()
          .meta({ description: "Floor tile; else the one chosen.", examples: ["tile-floor"] }),
        wallTile: productId("tile")
          .optional()
          .meta({ description: "Wall tile; else the one chosen.", examples: ["tile-wall"] }),
        tileAdhesive: productId("each")
          .optional()
          .meta({ description: "Adhesive, by kg.", examples: ["tile-adhesive"] }),
        grout: productId("each")
          .optional()
          .meta({ description: "Grout, by kg.", examples: ["grout"] }),
        tileTrim: productId("each")
          .optional()
          .meta({ description: "Edge trim, by m.", examples: ["tile-trim"] }),
        sealant: productId("each")
          .optional()
          .meta({ description: "Sealant, by m of joint.", examples: ["sealant"] }),
      })
      .prefault({})
      .meta({ description: "Product ids for this room; else those chosen for the job." }),
    trim: z
      .number()
      .min(0)
      .max(200)
      .default(0)
      .meta({ description: "Metres of edge trim.", examples: [4.2] }),
    note: line.optional().meta({ description: "What to know.", examples: ["tanking behind the shower"] }),
    wetWalls: z
      .boolean()
      .default(true)
      .meta({
        description: "Tiled walls get splashed: waterproofed behind, movement joints sealed.",
        examples: [true],
      }),
  })
  .meta({ description: "Tiled floor and walls of one room." })
export type TilingInputs = z.infer<typeof tilingInputs>
