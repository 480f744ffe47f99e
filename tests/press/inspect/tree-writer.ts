import { mkdirSync, writeFileSync } from "node:fs"
import { join } from "node:path"
import { openStaging, replaceOutput } from "../../../src/press/output-tree.ts"

/** Writes one tree after another into an output folder until it is killed: every file of a tree says its number. */
const output = process.argv[2]!
for (let number = 1; ; number++) {
  const staging = openStaging(output)
  for (const half of ["site", "print"]) {
    mkdirSync(join(staging, half, "inside"), { recursive: true })
    for (let file = 0; file < 20; file++)
      writeFileSync(join(staging, half, "inside", `${file}.txt`), String(number))
  }
  replaceOutput(output, staging)
  if (number === 1) process.stdout.write("written\n")
}
