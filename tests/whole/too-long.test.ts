import { existsSync, readdirSync, readFileSync, rmSync } from "node:fs"
import { join } from "node:path"
import { afterAll, describe, expect, it } from "vitest"
import { Fault } from "../../src/kernels/fault.ts"
import { openPdf } from "../press/inspect/open.ts"
import { textItems, textOutside } from "../press/inspect/text.ts"
import { build, type Change, copyOfJob, ownFolder, ref } from "./job-copy.ts"

const folder = ownFolder()
afterAll(() => rmSync(folder, { recursive: true, force: true }))

/** The room's work cut down to little, so that little is printed. */
const only = (work: string): Change => ({
  file: `${ref}/rooms/g1.yaml`,
  find: /^work:[\s\S]*$/m,
  put: `work:\n${work}\n`,
})

const oneSwitch = only("  electrics:\n    points: [{ kind: switch, wall: 1, fromLeft: 1350 }]")
const oneFloor = only("  floors: { finish: floating-board, deckScrews: false }")

const money = (note: string) => `rates: []
overheadAndProfit: 15
contingency: 5
vat: { percent: 20, because: ordinary work }
client: { decisions: [{ by: 2027-03-20, what: colour }], notes: [${note}] }
`

/** Builds the cut-down job with changes; what was thrown, or the status. */
async function built(
  name: string,
  changes: Change[],
  note = "Thank you.",
): Promise<{ status?: number; fault?: Error }> {
  const jobs = copyOfJob(join(folder, name), { changes, files: { [`${ref}/money.yaml`]: money(note) } })
  try {
    return { status: (await build(jobs, join(folder, name, "output"))).status }
  } catch (fault) {
    return { fault: fault as Error }
  }
}

const inFile = (file: string, key: string, value: string): Change => ({
  file: `${ref}/${file}`,
  find: new RegExp(`^${key}: .*$`, "m"),
  put: `${key}: ${value}`,
})

describe("text that is too long for its paper", () => {
  it("is a fault that names the sheet and the text; nothing is put in place", async () => {
    const { fault } = await built("too long", [oneSwitch], "N".repeat(150))
    expect(fault).toBeInstanceOf(Fault)
    expect(fault?.message).toMatch(/print\/garden-room\/client: past-width on J-71 by [\d.]+ mm: N{80}/)
    expect(readdirSync(join(folder, "too long", "output"))).toEqual([])
    expect(existsSync(join(folder, "too long", "output", ".building"))).toBe(false)
  }, 300_000)

  it("is a finding where it stands in the head or foot of pages", async () => {
    const { status } = await built("too long for the head", [
      inFile("rooms/g1.yaml", "name", "W".repeat(49)),
      inFile("job.yaml", "site", "M".repeat(81)),
    ])
    expect(status).toBe(1)
  })

  it("is broken over lines where it can be, and then nothing of it is lost or off the page", async () => {
    const place = "Longroomname".repeat(3)
    const product = "Longproductname".repeat(8)
    const changes = [
      oneFloor,
      inFile("rooms/g1.yaml", "name", place),
      { file: "catalogue.yaml", find: "name: Foil-faced underlay", put: `name: ${product}` },
    ]
    const { status, fault } = await built("long", changes)
    expect(fault).toBeUndefined()
    expect(status).toBe(0)
    for (const name of ["room-g1.pdf", "job.pdf"]) {
      const pdf = await openPdf(readFileSync(join(folder, "long", "output", "print", ref, name)))
      expect(await textOutside(pdf, (5 / 25.4) * 72), name).toEqual([])
      const text = (await textItems(pdf))
        .map((item) => item.text)
        .join("")
        .replace(/\s+/g, "")
      expect(text, name).toContain(place)
      if (name === "job.pdf") expect(text).toContain(product)
    }
  }, 300_000)
})
