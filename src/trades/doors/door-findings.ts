import type { At, Finding } from "../../kernels/finding.ts"
import { mmText } from "../../kernels/units.ts"
import type { JobFacts } from "../trade.ts"
import { isOpenWay } from "./escape/ways.ts"
import { type Fitted, type HungDoor, hasCloser, liningOf, makesLining } from "./hanging/hung-door.ts"
import { leafText, minutesHung } from "./hanging/leaf.ts"
import { leafSizeFor, leafSizes } from "./hanging/leaf-sizes.ts"
import {
  atDoor,
  belowGuidance,
  doesNotFit,
  halfText,
  notChosen,
  standsProud,
  thresholdClash,
  unproven,
} from "./messages.ts"
import type { RulesRead } from "./rules-read.ts"

/** Everything the author should know of one doorway before it is worked on. */
export function doorFindings(hung: HungDoor, job: JobFacts, rules: RulesRead): Finding[] {
  const at = doorAt(hung.door.id, job)
  if (isOpenWay(hung.door) && hung.work.hang === "stays") return []
  const fitted = hung.fitted
  return [
    ...guidance(hung, at),
    ...choices(hung, job, rules, at),
    ...opening(hung, rules, at),
    ...(fitted ? fitFindings(hung, fitted, rules, at) : []),
    ...(fitted ? hanging(hung, fitted, rules, at) : []),
  ]
}

/** Where a doorway stands in house.yaml. */
export function doorAt(id: string, job: Pick<JobFacts, "house">): At {
  return { file: "house.yaml", path: ["doors", job.house.doors.findIndex((door) => door.id === id)] }
}

function guidance(hung: HungDoor, at: At): Finding[] {
  const { ask, door, work, leaf } = hung
  if (ask.minutes === 0) return []
  const minutes = minutesHung(leaf, work)
  const where = { ...at, path: [...at.path, "work"] }
  if (work.hang === "stays" && minutes === 0 && !work.was) return [unproven(door.id, where, ask.minimumText)]
  const short: string[] = []
  if (minutes < ask.minutes) short.push(leafText(leaf, door, work))
  if (ask.smoke && !work.smoke) short.push("no smoke seal")
  if (ask.selfClosing && !hasCloser(work)) short.push("no closer")
  if (short.length === 0) return []
  const finding = belowGuidance(door.id, where, ask.minimumText, short.join(", "))
  if (ask.minimum !== "FD20-ask") return [finding]
  return [{ ...finding, expected: `${ask.minimumText}. ${ask.question ?? ""}`.trim() }]
}

function choices(hung: HungDoor, job: JobFacts, rules: RulesRead, at: At): Finding[] {
  const { door, work, leaf, home } = hung
  const findings: Finding[] = []
  if (work.hang !== "stays" && !leaf)
    findings.push(notChosen("leaf", door.id, { ...at, path: [...at.path, "work"] }))
  const timber = liningOf(work, job)
  if (makesLining(door) && leaf && !timber)
    findings.push(notChosen("lining", door.id, { ...at, path: [...at.path, "work"] }))
  if (makesLining(door) && timber && timber.width < door.wall) {
    findings.push(
      atDoor(
        "door-lining-too-narrow",
        { ...at, path: [...at.path, "wall"] },
        `Door ${door.id}: the lining is ${mmText(timber.width)} mm wide, the finished wall ${mmText(door.wall)} mm.`,
        "A lining is as deep as the finished wall: take a wider one.",
      ),
    )
  }
  if (timber && makesLining(door) && leaf && leaf.minutes > 0) {
    const least = rules.value("door-fire-lining-least")
    if (timber.thickness < least) {
      findings.push(
        atDoor(
          "door-fire-lining-thin",
          { ...at, path: [...at.path, "work"] },
          `Door ${door.id}: the lining is ${halfText(timber.thickness)} mm thick; ${halfText(least)} mm without the stop is usual for a fire-resisting leaf.`,
          "Read the leaf's data sheet for the lining it was tested in, or take a thicker one.",
        ),
      )
    }
  }
  if (!hung.here && work.hang !== "stays") {
    findings.push(
      atDoor(
        "door-not-placed",
        { file: home.file, path: ["doors"] },
        `Door ${door.id} swings into ${home.name} (${home.id}) but is not placed in one of its walls.`,
        "Enter it under doors of the room with its wall and distance; its swing is not checked until then.",
        "note",
      ),
    )
  }
  return findings
}

function opening(hung: HungDoor, rules: RulesRead, at: At): Finding[] {
  const { door, work } = hung
  if (work.hang === "stays") return []
  const findings: Finding[] = []
  if (makesLining(door) && door.lengthsTo === "lining") {
    findings.push(
      atDoor(
        "door-opening-not-structural",
        { ...at, path: [...at.path, "lengthsTo"] },
        `Door ${door.id}: a lining is to be made, but its width was taped between the old linings.`,
        "Take out the old lining, tape stud to stud at three heights, and enter that.",
      ),
    )
  }
  if (door.widths.length < 3 || door.heights.length < 3) {
    findings.push(
      atDoor(
        "door-measured-once",
        { ...at, path: [...at.path, "widths"] },
        `Door ${door.id}: width or height was not taped at three points, so taper and bow are not known.`,
        "Tape the width top, middle and bottom, and the height left, middle and right, before cutting.",
        "note",
      ),
    )
  }
  const most = rules.value("door-plumb-most")
  if (door.lining === "keep" && door.plumb > most) {
    findings.push(
      atDoor(
        "door-lining-out-of-plumb",
        { ...at, path: [...at.path, "plumb"] },
        `Door ${door.id}: the kept lining is ${halfText(door.plumb)} mm out of plumb over its height, ${halfText(most)} is the most for a leaf that stays where it is put.`,
        "Reset the hinge jamb plumb, or replace the lining; otherwise the leaf swings by itself.",
      ),
    )
  }
  const twist = rules.value("door-twist-most")
  if (door.lining === "keep" && (door.twist ?? 0) > twist) {
    findings.push(
      atDoor(
        "door-lining-in-twist",
        { ...at, path: [...at.path, "twist"] },
        `Door ${door.id}: the legs of the kept lining are ${halfText(door.twist ?? 0)} mm in twist, ${halfText(twist)} is the most for a leaf that meets its stop all the way.`,
        "Ease one leg back into plane, or move the stop to the hung leaf, or replace the lining.",
      ),
    )
  }
  return findings
}

function fitFindings(hung: HungDoor, fitted: Fitted, rules: RulesRead, at: At): Finding[] {
  const { door, work } = hung
  const where = { ...at, path: [...at.path, "work", "leaf"] }
  const findings = fitted.misses.map((miss) =>
    doesNotFit(
      door.id,
      miss.edge === "head"
        ? { ...at, path: [...at.path, "heights"] }
        : { ...at, path: [...at.path, "widths"] },
      miss,
      hint(hung, fitted, rules),
    ),
  )
  if (fitted.threshold.clash)
    findings.push(thresholdClash(door.id, { ...at, path: [...at.path, "work"] }, fitted.threshold.clash))
  const { least, most, clash } = fitted.threshold
  if (!clash && most - least < rules.value("door-threshold-play")) {
    findings.push(
      atDoor(
        "door-threshold-tight",
        { ...at, path: [...at.path, "work"] },
        `Door ${door.id}: the gap under the foot must be ${halfText(least)} to ${halfText(most)} mm: next to no play.`,
        "Read the leaf's data sheet for its own figure, or fit a seal at the foot.",
        "note",
      ),
    )
  }
  const tolerance = rules.value("door-proud-tolerance")
  if (fitted.proud !== null && fitted.proud > tolerance && !work.rebateBy && door.rebate) {
    findings.push(standsProud(door.id, where, { leaf: fitted.leaf.thickness, rebate: door.rebate }))
  }
  return findings
}

function hint({ door }: HungDoor, fitted: Fitted, rules: RulesRead): string {
  const narrowest = Math.min(...fitted.across.map((point) => point.opening))
  const size = leafSizeFor(narrowest, fitted.gap, leafSizes(rules))
  const range = `a leaf ${halfText(narrowest - 2 * fitted.gap.most)} to ${halfText(narrowest - 2 * fitted.gap.least)} mm wide at its narrowest point`
  return size
    ? `Door ${door.id} takes ${range}; a usual size that goes in as sold is ${size.width} x ${size.height}.`
    : `Door ${door.id} takes ${range}; no usual size goes in as sold.`
}

function hanging(hung: HungDoor, fitted: Fitted, rules: RulesRead, at: At): Finding[] {
  const { door, work } = hung
  const { hinges, latch, clear, leaf } = fitted
  const findings: Finding[] = []
  const where = { ...at, path: [...at.path, "work"] }
  for (const { top, zone } of hinges?.clashes ?? []) {
    findings.push(
      atDoor(
        "door-hinge-in-zone",
        where,
        `Door ${door.id}: the hinge with its top ${halfText(top)} mm from the top of the leaf meets ${zone.what} (${halfText(zone.from)} to ${halfText(zone.to)} mm).`,
        "Ask the leaf's maker where hinges may sit, or splice timber into the old recess first.",
      ),
    )
  }
  if (!hinges) {
    findings.push(
      atDoor(
        "door-mass-unknown",
        where,
        `Door ${door.id}: the mass of the old leaf is not known, so its hinges are not worked out.`,
        "Weigh it (two scales) and enter work.was.mass; until then reuse no fewer hinges than it had.",
        "note",
      ),
    )
  } else if (hinges.grade === null) {
    findings.push(
      atDoor(
        "door-hinge-grade-over",
        where,
        `Door ${door.id}: with ${Math.round(hinges.mass.adjusted)} kg as adjusted, no usual hinge grade carries the leaf.`,
        "Ask the hinge maker; consider a pivot.",
      ),
    )
  }
  const low = rules.value("door-handle-low")
  const high = rules.value("door-handle-high")
  if (latch.height < low || latch.height > high) {
    findings.push(
      atDoor(
        "door-handle-height",
        where,
        `Door ${door.id}: the spindle at ${mmText(latch.height)} mm lies outside ${mmText(low)} to ${mmText(high)} mm above the finished floor.`,
        "Match the other doors of the storey.",
      ),
    )
  }
  if (clear.before !== null && clear.after < clear.before) {
    findings.push(
      atDoor(
        "door-clear-width-less",
        where,
        `Door ${door.id}: the clear opening goes from ${halfText(clear.before)} to ${halfText(clear.after)} mm.`,
        "An alteration should not make access worse than it was (Approved Document M, from memory): ask building control if it matters here.",
        "note",
      ),
    )
  }
  if (work.was?.hinges && door.hinges && work.was.hinges !== door.hinges) {
    findings.push(
      atDoor(
        "door-hand-changes",
        where,
        `Door ${door.id}: the hand changes from ${work.was.hinges} to ${door.hinges}: a light switch may now stand behind the open leaf.`,
        "Look where the switch is, and move it to the lock side if need be.",
        "note",
      ),
    )
  }
  if (leaf.minutes > 0 && work.seal === false) {
    findings.push(
      atDoor(
        "door-fire-leaf-unsealed",
        where,
        `Door ${door.id}: a fire-resisting leaf is hung without an intumescent strip.`,
        "Its data sheet asks for strips in leaf or lining: fit them.",
      ),
    )
  }
  return findings
}
