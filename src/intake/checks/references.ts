import { type Draft, filesWithSchemas, listAt, textAt } from "../draft.ts"
import { noSuchWall, unknownReference, wrongKind } from "../messages.ts"
import { nearest } from "../nearest.ts"
import { beyond } from "../schema/house.ts"
import { productKinds } from "../schema/products.ts"
import { id, type Reference } from "../schema/values.ts"
import { valueAt } from "../schema-findings.ts"
import { type SchemaVisit, walkSchema } from "../schema-walk.ts"
import { findingIn, type LocatedFinding, type YamlFile } from "../yaml-file.ts"

/** Ids that nothing in the job has, products of another kind than asked, and wall numbers beyond their outline. */
export function references(draft: Draft): LocatedFinding[] {
  const targets = targetsOf(draft)
  const findings: LocatedFinding[] = []
  for (const [yaml, schema] of filesWithSchemas(draft)) {
    walkSchema(schema, yaml.value, (visit) => {
      findings.push(...unmet(yaml, visit, targets, roomMeant(yaml, visit.path, draft)))
    })
  }
  return [...findings, ...joistWalls(draft)]
}

/** The room that a wall number of a file speaks of: the file's own, or the one that a variation names. */
function roomMeant(yaml: YamlFile, path: (string | number)[], { files }: Draft): YamlFile {
  if (yaml !== files.variations) return yaml
  const named = textAt(yaml.value, ...path.slice(0, pathOfVariedRoom), "room")
  return files.rooms.find((room) => named !== undefined && textAt(room.value, "id") === named) ?? yaml
}

/** Length of the path `variations, 0, rooms, 0`. */
const pathOfVariedRoom = 4

/** What may be referred to. `complete` is false where a file could not be read, so that nothing is missed in it. */
interface Known {
  what: string
  ids: ReadonlySet<string>
  complete: boolean
}

interface Targets {
  known: Record<Exclude<Reference, "wall-of-this-room">, Known>
  kindOf: ReadonlyMap<string, string | undefined>
}

function targetsOf({ files, catalogue, trades }: Draft): Targets {
  const { house, rooms, products, programme } = files
  const roomIds = rooms.flatMap((room) => textAt(room.value, "id") ?? [])
  const room: Known = {
    what: "room",
    ids: new Set(roomIds),
    complete: rooms.every(isNamed) && !areRefused(files),
  }
  const all = [...listAt(catalogue, ["products"]), ...listAt(products, ["products"])]
  const kindOf = new Map(
    // Of two products with one id the first counts, so the last comes first here.
    all.toReversed().flatMap((each) => {
      const product = textAt(each, "id")
      return product === undefined ? [] : [[product, textAt(each, "kind")] as const]
    }),
  )
  const listed = (what: string, yaml: YamlFile, list: string): Known => {
    const ids = listAt(yaml, [list]).flatMap((each) => textAt(each, "id") ?? [])
    return { what, ids: new Set(ids), complete: isWhole(yaml) && isListOrNone(valueAt(yaml.value, [list])) }
  }
  return {
    kindOf,
    known: {
      room,
      "room-or-beyond": { ...room, ids: new Set([...roomIds, ...beyond]) },
      door: listed("doorway", house, "doors"),
      storey: listed("storey", house, "storeys"),
      product: {
        what: "product",
        ids: new Set(kindOf.keys()),
        complete: (catalogue ? [catalogue, products] : [products]).every(isWhole),
      },
      crew: listed("crew", programme, "crews"),
      trade: { what: "trade", ids: new Set(trades.map((trade) => trade.id)), complete: trades.length > 0 },
    },
  }
}

/** True if a file could be read and holds keys, so that what is not in it is nowhere. */
function isWhole({ readable, value }: YamlFile): boolean {
  return readable && typeof value === "object" && value !== null && !Array.isArray(value)
}

/** True for a room's file that says which room it is. */
function isNamed(room: YamlFile): boolean {
  return isWhole(room) && id.safeParse(valueAt(room.value, ["id"])).success
}

function isListOrNone(value: unknown): boolean {
  return value === undefined || Array.isArray(value)
}

function areRefused({ refused }: Draft["files"]): boolean {
  return refused.some(({ file }) => file === "rooms")
}

function unmet(yaml: YamlFile, visit: SchemaVisit, targets: Targets, room: YamlFile): LocatedFinding[] {
  const { value, meta, path } = visit
  const refersTo = meta.refersTo as Reference | undefined
  if (refersTo === undefined) return []
  if (refersTo === "wall-of-this-room") return beyondOutline(yaml, room, path)
  if (typeof value !== "string") return []
  const { what, ids, complete } = targets.known[refersTo]
  if (!ids.has(value))
    return complete ? [findingIn(yaml, unknownReference(what, value, nearest(value, ids)), path)] : []
  const kinds = meta.kinds as string[] | undefined
  const kind = refersTo === "product" ? targets.kindOf.get(value) : undefined
  return kinds?.length && kind !== undefined && productKinds.has(kind) && !kinds.includes(kind)
    ? [findingIn(yaml, wrongKind(value, kind, kinds), path)]
    : []
}

/** A wall number written in one file, held against the outline of a room's file. */
function beyondOutline(yaml: YamlFile, room: YamlFile, path: (string | number)[]): LocatedFinding[] {
  const wall = valueAt(yaml.value, path)
  const count = listAt(room, ["outline"]).length
  const isBeyond = typeof wall === "number" && Number.isInteger(wall) && count > 0 && wall > count
  return isBeyond ? [findingIn(yaml, noSuchWall(wall, count), path)] : []
}

function joistWalls({ files: { house, rooms } }: Draft): LocatedFinding[] {
  return listAt(house, ["storeys"]).flatMap((storey, index) => {
    const along = textAt(storey, "joists", "alongWallOf")
    const room = rooms.find((each) => along !== undefined && textAt(each.value, "id") === along)
    return room ? beyondOutline(house, room, ["storeys", index, "joists", "wall"]) : []
  })
}
