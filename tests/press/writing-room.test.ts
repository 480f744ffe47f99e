import { join } from "node:path"
import { beforeAll, describe, expect, it } from "vitest"
import type { Block } from "../../src/kernels/paper.ts"
import type { SetJob } from "../../src/press/set-job.ts"
import { siteData } from "../../src/press/site-data.ts"
import { writeSite } from "../../src/press/write-site.ts"
import { lockHouse } from "../fixtures/demo.ts"
import { withTestPress } from "./inspect/press.ts"
import { leastHeight, leastTick, type WritingRoom, writingRooms } from "./inspect/writing-room.ts"

/** The first sheet of each kind of the demo house in one document, drawings left out. */
function oneOfEach(): SetJob {
  const job = lockHouse
  const sheets = job.sheets
    .filter((sheet, index, all) => all.findIndex((other) => other.kind === sheet.kind) === index)
    .map((sheet) => ({ ...sheet, blocks: sheet.blocks.filter((block) => block.kind !== "drawing") }))
  return { ...job, sheets, packs: [{ id: "trial", title: "One of each", bound: false, sheets }] }
}

/** Boxes to tick that the sheets ask for. */
function asked(blocks: readonly Block[]): number {
  return blocks.reduce((sum, block) => {
    if (block.kind === "checks") return sum + block.items.length
    if (block.kind !== "table") return sum
    const ticked = block.rows.filter((row) => row.as !== "hold" && row.as !== "group")
    const columns = block.columns.flatMap((column, index) => (column.as === "tick" ? [index] : []))
    return sum + ticked.flatMap((row) => columns.filter((index) => row.cells[index] === "")).length
  }, 0)
}

describe("paper to write on", () => {
  let wanted = 0
  let sound: WritingRoom
  let flat: WritingRoom
  let open: WritingRoom

  beforeAll(async () => {
    const job = oneOfEach()
    wanted = asked(job.sheets.flatMap((sheet) => sheet.blocks))
    await withTestPress(async (press, staging) => {
      const data = siteData([job])
      const documents = data.documents.filter(({ path }) => path === "print/lock-house/trial")
      const few = { ...data, all: [], hosted: [], revisions: [], documents }
      await writeSite({ site: async () => few, staging })
      const html = join(staging, "press/print/lock-house/trial.html")
      const low = ".sign .write, .boxes .box { height: 5mm }"
      const bare = ".tick { border-right: 0; width: 3mm }"
      const found = await writingRooms(press, html, [low, bare])
      sound = found[0]!
      flat = found[1]!
      open = found[2]!
    })
  }, 280_000)

  it(`every line and box to write on is at least ${leastHeight} mm high, every tick box a closed square of ${leastTick} mm or more`, () => {
    expect(sound.faults).toEqual([])
    expect(sound.places).toBeGreaterThan(200)
  })

  it("there is a box for every tick that a sheet asks for", () => {
    expect(sound.ticks).toBe(wanted)
  })

  it("finds lines that are too low and boxes that are none", () => {
    expect(flat.faults.some((fault) => fault.includes("5.0 mm high"))).toBe(true)
    expect(open.faults.filter((fault) => fault.includes("no empty box")).length).toBe(open.ticks)
    expect(open.faults.some((fault) => fault.includes("box to tick of 3.0"))).toBe(true)
  })
})
