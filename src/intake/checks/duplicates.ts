import { type Draft, listAt, textAt } from "../draft.ts"
import { duplicateId, reservedId } from "../messages.ts"
import { positionOf } from "../place.ts"
import { beyond } from "../schema/house.ts"
import { findingIn, type LocatedFinding, type YamlFile } from "../yaml-file.ts"

/** Ids written twice where each must be its own; capitals alone make no difference, as file names are made of ids. */
export function duplicates({ files, catalogue }: Draft): LocatedFinding[] {
  const { house, rooms, products, programme, variations } = files
  const roomIds = rooms.map((yaml) => ({ yaml, path: ["id"] }))
  return [
    ...twice("room", roomIds),
    ...reserved(roomIds),
    ...twice("storey", idsIn(house, "storeys")),
    ...twice("stair", idsIn(house, "stairs")),
    ...twice("doorway", idsIn(house, "doors")),
    ...twice("product", [
      ...(catalogue ? idsIn(catalogue, "products") : []),
      ...idsIn(products, "products"),
    ]).filter((finding) => finding.at.file === products.file),
    ...twice("crew", idsIn(programme, "crews")),
    ...(variations ? twice("variation", idsIn(variations, "variations")) : []),
    ...rooms.flatMap((room) => [
      ...twice("doorway", idsIn(room, "doors", "door")),
      ...twice("window or hole", [...idsIn(room, "windows"), ...idsIn(room, "holes")]),
    ]),
  ]
}

/** Products written twice in the catalogue. */
export function duplicatesInCatalogue(catalogue: YamlFile): LocatedFinding[] {
  return twice("product", idsIn(catalogue, "products"))
}

interface Written {
  yaml: YamlFile
  path: (string | number)[]
}

function idsIn(yaml: YamlFile, list: string, key = "id"): Written[] {
  return listAt(yaml, [list]).map((_, index) => ({ yaml, path: [list, index, key] }))
}

function twice(what: string, all: Written[]): LocatedFinding[] {
  const first = new Map<string, Written>()
  return all.flatMap((written) => {
    const id = textAt(written.yaml.value, ...written.path)
    if (id === undefined) return []
    const earlier = first.get(id.toLowerCase())
    if (!earlier) first.set(id.toLowerCase(), written)
    return earlier ? [findingIn(written.yaml, duplicateId(what, id, placeText(earlier)), written.path)] : []
  })
}

function reserved(all: Written[]): LocatedFinding[] {
  return all.flatMap(({ yaml, path }) => {
    const id = textAt(yaml.value, ...path)?.toLowerCase()
    return id !== undefined && (beyond as readonly string[]).includes(id)
      ? [findingIn(yaml, reservedId(id), path)]
      : []
  })
}

function placeText({ yaml, path }: Written): string {
  const { line, column } = positionOf(yaml, path)
  return `${yaml.shown}:${line}:${column}`
}
