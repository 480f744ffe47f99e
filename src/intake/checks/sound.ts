import type { z } from "zod"
import { listAt } from "../draft.ts"
import { valueAt } from "../schema-findings.ts"
import type { LocatedFinding, YamlFile } from "../yaml-file.ts"

type Path = (string | number)[]

/** What stands at a path, read by its schema, if nothing in it has a finding; undefined otherwise. */
export function soundPart<T>(
  yaml: YamlFile,
  path: Path,
  schema: z.ZodType<T>,
  earlier: readonly LocatedFinding[],
): T | undefined {
  if (earlier.some((finding) => isWithin(finding, yaml, path))) return undefined
  return schema.safeParse(valueAt(yaml.value, path)).data
}

/** The sound entries of a list, each with its path. */
export function soundEntries<T>(
  yaml: YamlFile,
  path: Path,
  schema: z.ZodType<T>,
  earlier: readonly LocatedFinding[],
): { entry: T; path: Path }[] {
  return listAt(yaml, path).flatMap((_, index) => {
    const entry = soundPart(yaml, [...path, index], schema, earlier)
    return entry === undefined ? [] : [{ entry, path: [...path, index] }]
  })
}

function isWithin(finding: LocatedFinding, yaml: YamlFile, path: Path): boolean {
  const { at } = finding
  return (
    finding.severity === "error" &&
    at.file === yaml.file &&
    path.every((key, index) => String(at.path[index]) === String(key))
  )
}
