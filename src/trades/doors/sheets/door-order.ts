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
  const { door, floors, work } = hung
  const fire = fitted.leaf.minutes > 0
  const items = [
    `Check the mark: door ${door.id}, ${handText(hung)}.${fire ? " Photograph label and plug; they stay on." : ""}`,
    !makesLining(door) && floors.rise > 0
      ? `Foot of the kept lining is cut ${mmText(floors.buildUp)} above the deck.`
      : "",
    fitted.proud !== null && fitted.proud > 0 ? proudText(fitted.proud, work.rebateBy) : "",
    ...trimming(fitted),
    fire
      ? `Lipping left after planing: at least ${rules.value("door-lipping-least")} mm, or as the data sheet says.`
      : "",
    "Mark hinges from the top of the leaf; same marks on the lining lowered by the head gap. Cut in flush; one screw each, try, then all.",
    "Mark the spindle, bore, let in the latch; keep on the lining last, to the latch.",
    fire ? "Fit strips; no break but at the hinges. Never painted: strips, label, latch, hinges." : "",
    isBareOak(hung) ? "Seal all six faces and every cut-out the same day; no plain steel on oak." : "",
    `Stops: face ${halfText(fitted.leaf.thickness)} back from the knuckle face of the lining, to the closed leaf, light touch on the lock side.`,
  ].filter((each) => each !== "")
  return { kind: "list", caption: `Door ${door.id}: in this order`, items }
}

function trimming({ across, up }: Fitted): string[] {
  const edges = [
    { name: "hinge edge", values: across.map((each) => each.hingeTrim), how: ", evenly" },
    { name: "lock edge", values: across.map((each) => each.lockTrim), how: ", top to bottom" },
    { name: "foot", values: up.map((each) => each.footTrim), how: ", square and level" },
    { name: "head", values: up.map((each) => each.headTrim), how: ", left to right" },
  ]
  const isKept = ({ values }: { values: number[] }) => values.every((value) => value === 0)
  const kept = edges.filter(isKept).map((edge) => edge.name)
  const cut = edges
    .filter((edge) => !isKept(edge))
    .map(({ name, values, how }) => {
      const figures = new Set(values).size === 1 ? values.slice(0, 1) : values
      return `Take off the ${name} ${figures.map(halfText).join(" / ")}${how}.`
    })
  const rest = kept.length > 0 ? [`Nothing comes off: ${kept.join(", ")}.`] : []
  return [...cut, ...rest, "Ease the lock edge 2 or 3 degrees towards the stop."]
}

/** Gaps to be written in after hanging, and again after paint and floor, with their pass limits. */
export function gapRecord(hung: HungDoor, fitted: Fitted): Block {
  const { gap, threshold } = fitted
  const side = `${halfText(gap.least)} to ${halfText(gap.most)}`
  const foot = `${halfText(threshold.least)} to ${halfText(threshold.most)}`
  const boxes = Array.from({ length: 6 }, () => "")
  const places = ["top, left", "middle", "bottom, right"]
  return {
    kind: "table",
    caption: `Door ${hung.door.id}: gaps as measured, mm: three after hanging, three after paint and floor`,
    columns: [
      { label: "Where", width: 4 },
      { label: "Pass", as: "figure", width: 3 },
      ...places.map((place) => ({ label: `Hung: ${place}`, as: "write" as const, width: 3 })),
      ...places.map((place) => ({ label: `After: ${place}`, as: "write" as const, width: 3 })),
    ],
    rows: [
      { cells: ["Hinge side", side, ...boxes] },
      { cells: ["Lock side", side, ...boxes] },
      { cells: ["Head", side, ...boxes] },
      { cells: ["Under the foot", foot, ...boxes] },
    ],
  }
}

/** What is tried on the hung leaf. */
export function leafChecks(hung: HungDoor, fitted: Fitted): Block {
  const items = [
    { text: "Leaf stays where it is put, half open; swings clear of floor, wall and slope" },
    { text: "Latch holds, handle returns" },
    ...(hasCloser(hung.work) ? [{ text: "Closes and latches by itself from any angle" }] : []),
    ...(hung.work.thumbTurn ? [{ text: "Thumb-turn opens from outside with a coin" }] : []),
    ...(fitted.leaf.minutes > 0
      ? [{ text: "Label seen and photographed", write: "number on the label" }]
      : []),
  ]
  return { kind: "checks", caption: `Door ${hung.door.id}: checks`, items }
}
