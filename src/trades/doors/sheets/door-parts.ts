import type { Block } from "../../../kernels/paper.ts"
import { fixed } from "../../../kernels/units.ts"
import type { JobFacts } from "../../trade.ts"
import { type Fitted, type HungDoor, needsSmoke } from "../hanging/hung-door.ts"
import { hasBolt, type Mark, marksOf } from "../hanging/marks.ts"
import { furniture, hingeOf } from "../materials.ts"
import { halfText } from "../messages.ts"
import type { RulesRead } from "../rules-read.ts"

/** Marks on leaf and lining with what sits there, then closer, foot seal and strips, in the order a joiner comes to them. */
export function partsTable(hung: HungDoor, fitted: Fitted, job: JobFacts, rules: RulesRead): Block {
  const marks = marksOf(hung, fitted, rules)
  const hinges = hingeTexts(hung, fitted, job, rules)
  const marked = marks.map((mark, n) => [
    mark.what,
    halfText(mark.onLeaf),
    halfText(mark.onLining),
    halfText(mark.overFloor),
    mark.of === "hinge" ? (hinges[n] ?? "the same") : lockSideText(mark, hung, fitted, job),
  ])
  const others = furniture(hung, job)
    .filter(({ what }) => !isOnLockLine(what))
    .map(({ what }) => [what, howFitted(what, fitted, job)])
  const parts = [...others, ...sealRows(hung, fitted, job)].map(([what, how]) => [what!, "", "", "", how!])
  return {
    kind: "table",
    caption: `Door ${hung.door.id}: marks from the top of the leaf, from under the lining's head, over the floor, mm`,
    columns: [
      { label: "What", width: 47 },
      { label: "Leaf", as: "figure", width: 16 },
      { label: "Lining", as: "figure", width: 16 },
      { label: "Floor", as: "figure", width: 16 },
      { label: "How", width: 91 },
      { label: "In", as: "tick", width: 9 },
    ],
    rows: [...marked, ...parts].map((cells) => ({ cells: [...cells, ""] })),
  }
}

/** What is said beside each hinge from the top: its recess, grade and load, screws. */
function hingeTexts(hung: HungDoor, { hinges }: Fitted, job: JobFacts, rules: RulesRead): string[] {
  if (!hinges) return []
  const { mass, grade, count, length, recess } = hinges
  const graded = grade === null ? "no usual grade: ask the maker" : gradeText(grade, rules)
  const added = mass.added.map((each) => `${each.what} +${fixed(each.percent, 0)} %`).join(", ")
  const load = `${fixed(mass.adjusted, 1)} kg on them${added ? `: ${fixed(mass.leaf, 1)}, ${added}` : ""}`
  const { screw } = hingeOf(hung, job)
  const screws = `${count * rules.value("door-hinge-screws")} screws${screw ? `: ${screw}` : ""}`
  const texts = [
    `recess ${length} long, ${halfText(recess)} deep, wide as the flap, both sides`,
    `${graded}; ${load}`,
    screws,
  ]
  return count > 2 ? texts : [texts[0]!, `${texts[1]}; ${texts[2]}`]
}

/** What sits on the lock side at a mark, and how far in. */
function lockSideText(mark: Mark, hung: HungDoor, { latch, leaf }: Fitted, job: JobFacts): string {
  const centred = `centre ${halfText(leaf.thickness / 2)} from knuckle face`
  const what = furniture(hung, job).map((each) => each.what)
  if (mark.of === "bolt") {
    const bolt = what.find((each) => each.startsWith("Thumb-turn")) ?? "Lock with keep"
    return `${bolt.toLowerCase()}; second keep; ${centred}`
  }
  const here = what.filter(
    (each) => /^(Latch|Handles)/.test(each) || (each.startsWith("Lock") && !hasBolt(hung.work)),
  )
  const fitted =
    here.length > 0
      ? `${here
          .map((each) => each.replace(" with keep", "").replace(", pair", ""))
          .join(", ")
          .toLowerCase()}; `
      : ""
  return `${fitted}backset ${halfText(latch.backset)}; ${centred}${padText(hung)}`
}

function isOnLockLine(what: string): boolean {
  return /^(Latch|Handles|Lock|Thumb-turn)/.test(what)
}

/** Pads as the certificate says; nothing where that was not entered, for then the checks ask. */
function padText({ work, leaf }: HungDoor): string {
  const pads = (leaf?.minutes ?? 0) > 0 ? work.certificate?.pads : undefined
  if (pads === undefined) return ""
  return pads ? "; pads under flaps, case and keep" : "; no pads asked by its data sheet"
}

function gradeText(grade: number, rules: RulesRead): string {
  const recalled = rules.isFromMemory(`door-hinge-grade-${grade}`) ? " (grades from memory)" : ""
  return `grade ${grade}${recalled}`
}

function howFitted(what: string, fitted: Fitted, job: JobFacts): string {
  if (what.startsWith("Closer")) return closerText(fitted, job)
  if (what.startsWith("Seal at the foot"))
    return "let into the foot or planted by its maker's sheet; shuts the gap"
  return "by its maker's template"
}

function closerText({ closer, leaf }: Fitted, job: JobFacts): string {
  if (!closer) return ""
  const room = job.house.rooms.find((each) => each.id === closer.side)?.name ?? closer.side
  const knuckles = closer.face === "pull" ? "knuckle side" : "side away from the knuckles"
  const size = closer.size === null ? "no usual size carries this leaf" : `power size ${closer.size} or more`
  const fire = leaf.minutes > 0 ? " (fire door's least from memory)" : ""
  return `on the ${closer.face} face, ${knuckles}, towards ${room}; ${size}${fire}; set out by the maker's template`
}

function sealRows(hung: HungDoor, fitted: Fitted, job: JobFacts): string[][] {
  if (fitted.seals.length === 0 || hung.work.seal === false) return []
  const product = typeof hung.work.seal === "string" ? hung.work.seal : job.chosen("fire-seal")
  const name = job.product(product, "each")?.name ?? "Intumescent strip"
  const lengths = fitted.seals
    .map((cut) => `${cut.where.replace(" jamb", "")} ${cut.lengths.map(halfText).join(" + ")}`)
    .join("; ")
  return [[needsSmoke(hung) ? `${name}, with smoke blade` : name, lengths]]
}
