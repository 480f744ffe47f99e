import type { Quantity, Task } from "../trade.ts"
import { jointOf, type TileField } from "./fields.ts"
import type { TilingInputs } from "./inputs.ts"

/** What a room's tiling takes: tiles by field, adhesive, grout, sealant, trim. */
export function tilingQuantities(task: Task<TilingInputs>, fields: TileField[]): Quantity[] {
  const { rules } = task.job
  const waste = 1 + rules.value("tile-waste") / 100
  const paste = 1 + rules.value("tile-paste-waste") / 100
  const joint = jointOf(task)
  const common = { trade: "tiling", room: task.room.id }
  const tiles = fields.map((field): Quantity => {
    const one = (field.tile.width * field.tile.height) / 1_000_000
    return {
      ...common,
      what: `${field.tile.name}, ${field.name.toLowerCase()}`,
      product: field.tile.id,
      net: field.area,
      gross: field.pieces.length * one * waste,
      unit: "m2",
      from: `${field.across.count} × ${field.up.count} less what lies in openings or beyond the edges: ${field.pieces.length} tiles, and ${rules.value("tile-waste")} %`,
    }
  })
  const adhesive = fields.reduce(
    (sum, field) => sum + field.area * rules.value(`tile-adhesive-${field.on}`),
    0,
  )
  const grout = fields.reduce(
    (sum, field) => sum + field.area * groutPerM2(field.tile, joint, rules.value("tile-grout-density")),
    0,
  )
  const sealed = fields.reduce((sum, field) => sum + field.sealed, 0)
  const by = (use: "tileAdhesive" | "grout" | "tileTrim" | "sealant") =>
    task.job.product(task.input.products[use] ?? task.job.chosen(use), "each")?.id ?? null
  return [
    ...tiles,
    {
      ...common,
      what: "Tile adhesive",
      product: by("tileAdhesive"),
      net: adhesive,
      gross: adhesive * paste,
      unit: "kg",
      from: "m2 of walls and floor by their rates",
    },
    {
      ...common,
      what: "Grout",
      product: by("grout"),
      net: grout,
      gross: grout * paste,
      unit: "kg",
      from: `joints of ${joint} mm, tile thickness deep`,
    },
    {
      ...common,
      what: "Sealant at corners and floor",
      product: by("sealant"),
      net: sealed,
      gross: sealed,
      unit: "m",
      from: "round floor, sides and foot of walls",
    },
    ...(task.input.trim > 0
      ? [
          {
            ...common,
            what: "Edge trim",
            product: by("tileTrim"),
            net: task.input.trim,
            gross: task.input.trim * waste,
            unit: "m" as const,
            from: "as written",
          },
        ]
      : []),
  ]
}

/**
 * Grout in the joints, kg a m2: (L + W) / (L × W) × depth × joint × density, lengths in mm, density in kg/l
 * (common practice of grout makers).
 */
export function groutPerM2(
  tile: { width: number; height: number; thickness: number },
  joint: number,
  density: number,
): number {
  return ((tile.width + tile.height) / (tile.width * tile.height)) * tile.thickness * joint * density
}
