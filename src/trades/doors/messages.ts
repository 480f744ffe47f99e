import type { At, Finding } from "../../kernels/finding.ts"
import { fixed, type Mm } from "../../kernels/units.ts"
import type { Miss } from "./hanging/fit.ts"
import type { PackingMiss } from "./hanging/lining-fit.ts"
import type { ThresholdDemand } from "./hanging/threshold.ts"

/** A figure in mm for the reader: whole, or with the half millimetre a joiner marks. */
export function halfText(value: Mm): string {
  const rounded = Math.round(value * 2) / 2
  return Number.isInteger(rounded) ? String(rounded) : fixed(rounded, 1)
}

/** A leaf under what guidance asks of the doorway. */
export function belowGuidance(door: string, at: At, asked: string, hung: string): Finding {
  return {
    code: "door-below-guidance",
    severity: "warning",
    at,
    message: `Door ${door}: guidance asks ${asked}, but what hangs there shows less (${hung}).`,
    expected: asked,
    mend: "Choose a leaf with label, seals and closer as asked, or get building control's answer in writing.",
  }
}

/** A leaf that stays where guidance asks for more than is known of it. */
export function unproven(door: string, at: At, asked: string): Finding {
  return {
    code: "door-stays-unproven",
    severity: "warning",
    at,
    message: `Door ${door}: guidance asks ${asked}; the leaf that stays shows no label.`,
    expected: asked,
    mend: "Look for a label or plug on its edge; if there is none, replace or upgrade it, or ask building control.",
  }
}

/** A leaf or lining timber that nobody chose. */
export function notChosen(what: "leaf" | "lining", door: string, at: At): Finding {
  return {
    code: `door-${what}-not-chosen`,
    severity: "warning",
    at,
    message: `Door ${door}: no ${what} is chosen, so its measures cannot be worked out.`,
    mend:
      what === "leaf"
        ? "Give work.leaf a product id (or work.was its measures, where the old leaf goes back)."
        : "Give work.lining a product id, or choose a lining for the job in products.yaml.",
  }
}

/** A gap or packing outside its limits, or a trim over the leaf's data, at a measured point. */
export function doesNotFit(door: string, at: At, miss: Miss | PackingMiss, hint: string): Finding {
  const figure = halfText(miss.figure)
  const limit = halfText(miss.limit)
  if ("over" in miss && miss.kind === "gap-under") {
    return {
      code: "door-trim-over-limit",
      severity: "warning",
      at,
      message: `Door ${door}, ${miss.edge} ${miss.at}: with all the leaf's data allow taken off, the gap is ${figure} mm and ${limit} is the least: ${halfText(miss.over)} mm more would have to come off.`,
      expected: hint,
      mend: "Widen the opening there, or take a smaller leaf; a fire leaf is never cut over its data sheet.",
    }
  }
  if ("over" in miss) {
    return {
      code: "door-gap-over-limit",
      severity: "warning",
      at,
      message: `Door ${door}, ${miss.edge} ${miss.at}: the gap is ${figure} mm, ${limit} is the most.`,
      expected: hint,
      mend: `Pack or reset the lining there by ${halfText(miss.figure - miss.limit)} mm, or take a larger leaf.`,
    }
  }
  const isOver = miss.kind === "packing-over"
  return {
    code: isOver ? "door-packing-over-limit" : "door-packing-under-limit",
    severity: "warning",
    at,
    message: `Door ${door}, ${miss.edge} ${miss.at}: ${figure} mm, ${limit} is the ${isOver ? "most" : "least"}.`,
    mend: isOver
      ? `Make the opening smaller with timber: ${halfText(miss.figure - miss.limit)} mm too much.`
      : "Enlarge the opening, or take a smaller leaf.",
  }
}

/** Two demands on the gap under the foot that cannot both be met. */
export function thresholdClash(
  door: string,
  at: At,
  clash: readonly [ThresholdDemand, ThresholdDemand],
): Finding {
  const [least, most] = clash
  return {
    code: "door-threshold-clash",
    severity: "warning",
    at,
    message: `Door ${door}: under the foot at least ${halfText(least.least ?? 0)} mm is wanted (${least.what}) and at most ${halfText(most.most ?? 0)} mm allowed (${most.what}).`,
    mend: "Let air in another way (a grille tested for the leaf, a wall vent) or fit a seal at the foot; the sheet keeps to the most.",
  }
}

/** A leaf thicker than the rebate of a kept lining. */
export function standsProud(door: string, at: At, figures: { leaf: Mm; rebate: Mm }): Finding {
  const { leaf, rebate } = figures
  return {
    code: "door-leaf-stands-proud",
    severity: "warning",
    at,
    message: `Door ${door}: the leaf is ${halfText(leaf)} mm thick and the rebate ${halfText(rebate)}, so it would stand ${halfText(leaf - rebate)} mm proud.`,
    mend: `Move the stop back by ${halfText(leaf - rebate)} mm, deepen the rebate, or replace the lining; say which in work.rebateBy.`,
  }
}

/** A plain warning or note at a doorway. */
export function atDoor(
  code: string,
  at: At,
  message: string,
  mend: string,
  severity: Finding["severity"] = "warning",
): Finding {
  return { code, severity, at, message, mend }
}
