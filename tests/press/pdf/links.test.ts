import { expect, it } from "vitest"

import { describeLinks } from "../../../src/press/pdf/links.ts"
import { annotationsOf, look, plain } from "../inspect/look.ts"
import { reworked, taggedPrint } from "../inspect/tagged-print.ts"

it("links say where they lead", async () => {
  const pdf = await reworked(await taggedPrint(), describeLinks)
  const words = annotationsOf(pdf).map((annotation) => plain(look(annotation, "Contents")))
  expect(words).toEqual(["Go to page 2", "Open https://jobs.example.co.uk/a/"])
})
