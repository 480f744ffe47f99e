import type { Block } from "../../../kernels/paper.ts"
import { mmText } from "../../../kernels/units.ts"
import { type Fitted, type HungDoor, hasCloser, makesLining } from "../hanging/hung-door.ts"
import { halfText } from "../messages.ts"
import type { RulesRead } from "../rules-read.ts"
import { isBareOak, proudText } from "../steps.ts"

/** The hand in words. */
export function handText(hung: HungDoor): string {
  return hung.door.hinges
    ? `hinges on the ${hung.door.hinges}, seen from where the knuckles show`
    : "hand not given: ask before cutting in"
}

/** The order of work on one leaf, for the one who hangs it. */
export function workOrder(hung: HungDoor, fitted: Fitted, rules: RulesRead): Block {
  const { door, work } = hung
  const padsAsked = work.certificate?.pads === undefined ? " Pads (data sheet): yes / no." : ""
  const fire = fitted.leaf.minutes > 0
  const items = [
    `Check the mark: door ${door.id}, hinges on the ${door.hinges ?? "side to be asked"}.${fire ? ` Photograph label and plug.${padsAsked}` : ""}`,
    keptLining(hung, fitted),
    ...trimming(fitted, rules),
    "Mark hinges on leaf and lining by the table; let flaps in flush; one screw each, try, then all.",
    "Mark the spindle, bore, let in the latch; keeps on the lining by the table, tried with the latch before cutting.",
    finishText(fire, isBareOak(hung)),
    stopText(hung, fitted, rules),
  ].filter((each) => each !== "")
  return { kind: "list", caption: `Door ${door.id}: in this order`, items }
}

/** What is done to a kept lining before the leaf; empty where a lining is made. */
function keptLining({ door, floors, work }: HungDoor, { proud }: Fitted): string {
  if (makesLining(door)) return ""
  const foot =
    floors.rise > 0 ? `Foot of the kept lining is cut ${mmText(floors.buildUp)} above the deck. ` : ""
  const moved = proud !== null && proud > 0 ? `${proudText(proud, work.rebateBy)} ` : ""
  return `${foot}${moved}Splice timber into old recesses not used again; filler does not hold.`
}

/** Strips, and the sealing of bare oak, once everything is cut in. */
function finishText(fire: boolean, oak: boolean): string {
  const strips = fire ? "Fit strips, broken only at the hinges. " : ""
  const seal = oak ? "Seal all six faces and cut-outs the same day; no plain steel on oak." : ""
  return `${strips}${seal}`.trim()
}

function stopText({ work }: HungDoor, { leaf, proud }: Fitted, rules: RulesRead): string {
  if (proud !== null && proud <= 0) return "The old stop stays: the leaf closes on it all the way round."
  if (proud !== null && work.rebateBy === "deepen") return ""
  return `Stop: face ${halfText(leaf.thickness)} back from the knuckle face of the lining, set to the closed leaf; pins at ${rules.value("door-stop-pins")}.`
}

function trimming({ across, up, leaf }: Fitted, rules: RulesRead): string[] {
  const edges = [
    { name: "hinge edge", values: across.map((each) => each.hingeTrim), how: ", evenly" },
    { name: "lock edge", values: across.map((each) => each.lockTrim), how: "" },
    { name: "foot", values: up.map((each) => each.footTrim), how: ", square" },
    { name: "head", values: up.map((each) => each.headTrim), how: "" },
  ]
  const cut = edges
    .filter(({ values }) => values.some((value) => value > 0))
    .map(({ name, values, how }) => {
      const figures = new Set(values).size === 1 ? values.slice(0, 1) : values
      return `${name} ${figures.map(halfText).join(" / ")}${how}`
    })
  const taken = cut.length > 0 ? `Take off: ${cut.join("; ")}.` : "Nothing comes off the leaf."
  const lipping = leaf.minutes > 0 ? ` Lipping left: ${rules.value("door-lipping-least")} (data sheet).` : ""
  return [`${taken} ${leadText(across, leaf, rules)}${lipping}`]
}

/** The lead of the lock edge over the leaf's thickness, as far as the leaf's data let that edge be planed. */
function leadText(across: Fitted["across"], leaf: Fitted["leaf"], rules: RulesRead): string {
  const angle = rules.value("door-edge-lead")
  const wished = Math.round(2 * leaf.thickness * Math.tan((angle * Math.PI) / 180)) / 2
  const left = leaf.trim.lock - Math.max(...across.map((each) => each.lockTrim))
  const lead = Math.min(wished, left)
  return lead > 0
    ? `Lead on the lock edge: ${halfText(lead)} off its stop side.`
    : "No lead on the lock edge: nothing more may come off it."
}

/** Gaps to be written in after hanging, and again after paint and floor, with their pass limits. */
export function gapRecord(hung: HungDoor, fitted: Fitted): Block {
  const { gap, threshold } = fitted
  const side = passText(gap)
  const foot = passText(threshold)
  const boxes = Array.from({ length: 6 }, () => "")
  const places = ["1", "2", "3"]
  return {
    kind: "table",
    caption: `Door ${hung.door.id}: gaps as measured, mm: 1 top or left, 2 middle, 3 bottom or right`,
    columns: [
      { label: "Where", width: 4 },
      { label: "Pass", as: "figure", width: 3 },
      ...places.map((place) => ({ label: `Hung ${place}`, as: "write" as const, width: 3 })),
      ...places.map((place) => ({ label: `Painted ${place}`, as: "write" as const, width: 3 })),
    ],
    rows: [
      { cells: ["Hinge side", side, ...boxes] },
      { cells: ["Lock side", side, ...boxes] },
      { cells: ["Head", side, ...boxes] },
      { cells: ["Under the foot", foot, ...boxes] },
    ],
  }
}

/** A pair of pass limits; one figure where they are the same. */
export function passText({ least, most }: { least: number; most: number }): string {
  return least === most ? halfText(least) : `${halfText(least)} to ${halfText(most)}`
}

/** What is tried on the hung leaf, and what only the leaf's own papers tell. */
export function leafChecks(hung: HungDoor, fitted: Fitted, rules: RulesRead): Block {
  const { work, door } = hung
  const tried = [
    "Stays half open; clear of floor, wall, slope; latches",
    ...(hasCloser(work) ? ["closes and latches by itself from any angle"] : []),
    ...(work.thumbTurn ? ["thumb-turn opens from outside with a coin"] : []),
  ].join("; ")
  const fire = fitted.leaf.minutes > 0
  const thick = rules.isFromMemory("door-fire-lining-least") ? " (from memory)" : ""
  return {
    kind: "checks",
    caption: `Door ${door.id}: checks`,
    items: [
      fire ? { text: `${tried}; label photographed`, write: "label number" } : { text: tried },
      ...(fire && door.lining === "keep"
        ? [
            {
              text: `Kept lining sound, at least ${rules.value("door-fire-lining-least")} thick without its stop${thick}, filled to the wall`,
              write: "thickness",
            },
          ]
        : []),
    ],
  }
}
