import { expect, it } from "vitest"

import type { LayoutFault } from "../../../src/press/browser/layout-check.ts"
import { printPdf } from "../../../src/press/print.ts"
import { contentWidth, htmlFile, trialBody, withTestPress } from "../inspect/press.ts"

const longRow = "<tr><td style='white-space:nowrap'>skirting length ".concat(
  "4,400 mm ".repeat(30),
  "</td></tr>",
)

const cases: { what: string; body: string; faults: (Partial<LayoutFault> | object)[] }[] = [
  { what: "a sound document", body: trialBody, faults: [] },
  {
    what: "a row made too long on purpose",
    body: `<section data-sheet="A1-03"><table>${longRow}</table></section>`,
    faults: [
      { kind: "past-width", sheet: "A1-03", text: expect.stringContaining("skirting length") },
      { kind: "shrunk" },
    ],
  },
  {
    what: "a drawing wider than its page by 5 mm",
    body: "<section data-sheet='04'><svg role='img' aria-label='plan' style='width:185mm;height:10mm'></svg></section>",
    faults: [{ kind: "past-width", sheet: "04", text: "<svg>", by: 5 }, { kind: "shrunk" }],
  },
  {
    what: "text hung out to the left",
    body: "<section data-sheet='05'><p style='margin-left:-8mm'>door 3</p></section>",
    faults: [{ kind: "past-width", sheet: "05", text: "door 3", by: 8 }],
  },
  {
    what: "a box that hides part of its text",
    body: "<section data-sheet='06'><p style='height:5mm;overflow:hidden'>cut at 1,204<br>hinge at 150</p></section>",
    faults: [{ kind: "cut-off", sheet: "06", text: "cut at 1,204hinge at 150" }],
  },
  {
    what: "a box that may hide what it holds",
    body: "<section data-sheet='06'><p data-may-clip style='height:5mm;overflow:hidden'>one<br>two</p></section>",
    faults: [],
  },
  {
    what: "a box that floats free",
    body: "<section data-sheet='07'><p>wall 1</p><p style='position:absolute;top:0'>wall 2</p></section>",
    faults: [{ kind: "floating", sheet: "07", text: "wall 2" }],
  },
  {
    what: "a lying sheet that uses its own width",
    body: "<section data-sheet='08' data-page-width='267' style='page:wide'><table style='width:267mm'><tr><td>bars</td></tr></table></section>",
    faults: [],
  },
  {
    what: "a lying sheet that goes past its own width",
    body: "<section data-sheet='08' data-page-width='267' style='page:wide'><p style='width:275mm'>programme</p></section>",
    faults: [{ kind: "past-width", sheet: "08", text: "programme", by: 8 }, { kind: "shrunk" }],
  },
]

it("finds each fault planted on a sheet, and none where there is none", async () => {
  await withTestPress(async (press, folder) => {
    for (const { what, body, faults } of cases) {
      const file = htmlFile(folder, `<p>Full-size text</p>${body}`, "@page wide{size:A4 landscape}")
      const { layoutFaults } = await printPdf(press, file, { contentWidth })
      expect(layoutFaults, what).toEqual(faults.map((fault) => expect.objectContaining(fault)))
    }
  })
})
