import type { z } from "zod"
import { type Draft, filesWithSchemas, listAt, textAt } from "../draft.ts"
import { unitSlip } from "../messages.ts"
import type { Slip } from "../schema/values.ts"
import { valueAt } from "../schema-findings.ts"
import type { SchemaVisit } from "../schema-walk.ts"
import { walkSchema } from "../schema-walk.ts"
import { findingIn, type LocatedFinding, type YamlFile } from "../yaml-file.ts"

/** Figures that are more likely metres or centimetres than the millimetres the format asks; none is changed. */
export function unitSlips(draft: Draft): LocatedFinding[] {
  return [
    ...filesWithSchemas(draft).flatMap(([yaml, schema]) => slipsIn(yaml, schema)),
    ...draft.files.rooms.flatMap(roomInCentimetres),
  ]
}

/** Slips in one file. */
export function slipsIn(yaml: YamlFile, schema: z.ZodType): LocatedFinding[] {
  const findings: LocatedFinding[] = []
  walkSchema(schema, yaml.value, (visit) => {
    const meant = suspect(visit)
    if (meant)
      findings.push(findingIn(yaml, unitSlip(visit.value as number, meant.unit, meant.figure), visit.path))
  })
  return findings
}

/** mm in a metre and in a centimetre. */
const inMetre = 1000
const inCentimetre = 10

/** Under this a figure meant in metres (a house is no longer than that); above it centimetres are more likely. */
const likelyMetres = 20

/** A room whose longest wall is shorter than this, mm, is no room that anyone works in (common practice); stores may be. */
const shortestLongWall = 1000

function suspect({
  value,
  meta,
}: SchemaVisit): { unit: "metres" | "centimetres"; figure: number } | undefined {
  const slip = meta.slip as Slip | undefined
  if (!slip || typeof value !== "number" || value === 0 || Math.abs(value) >= slip.below) return undefined
  if (slip.fractionsOnly && Number.isInteger(value)) return undefined
  return Math.abs(value) < likelyMetres
    ? { unit: "metres", figure: rounded(value * inMetre) }
    : { unit: "centimetres", figure: rounded(value * inCentimetre) }
}

function roomInCentimetres(room: YamlFile): LocatedFinding[] {
  if (["store", "cupboard"].includes(textAt(room.value, "use") ?? "")) return []
  const lengths = listAt(room, ["outline"]).map((run) => Number(valueAt(run, ["length"])))
  const longest = Math.max(...lengths)
  const isSlip = lengths.length > 0 && longest >= likelyMetres && longest < shortestLongWall
  const path = ["outline", lengths.indexOf(longest), "length"]
  return isSlip ? [findingIn(room, unitSlip(longest, "centimetres", longest * inCentimetre), path)] : []
}

/** Cleared of binary noise: 2.41 metres is 2410, not 2409.9999999999995. */
function rounded(value: number): number {
  const digits = 12
  return Number(value.toPrecision(digits))
}
