import type { RoomFile } from "../intake/schema/room.ts"
import type { At, Finding } from "../kernels/finding.ts"
import type { Point } from "../kernels/polygon/point.ts"
import { solveOutline } from "../kernels/traverse/solve-outline.ts"
import type { OutlineSolution, Residual, Suspect } from "../kernels/traverse/survey.ts"
import { fixed, type Mm, mmText } from "../kernels/units.ts"
import type { Rules } from "../rulebook/rules.ts"
import type { ShapeTrust } from "./room.ts"

/** A right angle, degrees: what "right" and "left" are taken for. */
const square = 90

/** The outline of a room, adjusted so that it closes, with how far it can be trusted. */
export interface MeasuredOutline {
  corners: Point[]
  /** Length of each wall after adjustment, mm. */
  adjusted: Mm[]
  trust: ShapeTrust
  findings: Finding[]
}

/**
 * The outline of a room from its runs, turns and diagonals. A turn written as a word is assumed and bends first; one written
 * in degrees is measured; taped lengths stay within their tolerance.
 */
export function measuredOutline(file: RoomFile, at: string, rules: Rules): MeasuredOutline {
  const solution = solveOutline({
    runs: file.outline.map((run) => ({
      length: run.length,
      turn: run.turn === "right" ? square : run.turn === "left" ? -square : run.turn,
      measured: typeof run.turn === "number",
    })),
    checks: file.diagonals.map(({ from, to, length }) => ({ from: from - 1, to: to - 1, length })),
    tolerances: {
      length: file.measured.tape,
      assumedTurn: rules.value("survey-assumed-turn"),
      measuredTurn: rules.value("survey-measured-turn"),
      ...(isChecked(file) ? { shape: rules.value("survey-shape-looseness") } : {}),
    },
  })
  return {
    corners: solution.corners,
    adjusted: solution.lengths,
    trust: trustOf(solution, file),
    findings: solution.ok ? looseFindings(solution, at) : [closureFinding(solution, file, at)],
  }
}

/** Lengths alone never fix four sides or more: only a diagonal or a measured turn lets a small looseness pass. */
function isChecked(file: RoomFile): boolean {
  return file.diagonals.length > 0 || file.outline.some((run) => typeof run.turn === "number")
}

function trustOf(solution: OutlineSolution, file: RoomFile): ShapeTrust {
  const lengths = solution.residuals.filter((each) => each.kind !== "turn")
  return {
    fixed: solution.fixed,
    needs: solution.needs.map(({ from, to }) => ({ from: from + 1, to: to + 1 })),
    looseness: solution.looseness,
    closure: solution.misclosure.gap,
    worstResidual: Math.max(0, ...lengths.map((each) => Math.abs(each.residual))),
    residuals: solution.residuals.map((each) => ({
      what: nameOf(each, file),
      taped: each.read,
      adjusted: each.found,
      residual: each.residual,
      unit: each.kind === "turn" ? "°" : "mm",
    })),
  }
}

function nameOf({ kind, index }: Pick<Residual, "kind" | "index">, file: RoomFile): string {
  if (kind === "run") return `wall ${index + 1}`
  if (kind === "turn") return `turn after wall ${index + 1}`
  const check = file.diagonals[index]!
  return `diagonal from corner ${check.from} to corner ${check.to}`
}

function looseFindings(solution: OutlineSolution, file: string): Finding[] {
  if (solution.fixed) return []
  const needs = solution.needs.map(({ from, to }) => `from corner ${from + 1} to corner ${to + 1}`)
  const [first, ...more] = needs
  const wanted = more.length === 0 ? "one more diagonal" : `${needs.length} more diagonals`
  return [
    {
      code: "shape-not-fixed",
      severity: "note",
      at: { file, path: ["outline"] },
      message: first
        ? `Shape not fixed: ${wanted}, ${needs.join("; and ")}.`
        : "Shape not fixed: tape diagonals between corners.",
      mend: "Corner n is the left end of wall n. Tape it and add it to the diagonals; until then turns that were not measured are taken as written.",
    },
  ]
}

function closureFinding(solution: OutlineSolution, file: RoomFile, name: string): Finding {
  const suspects = solution.suspects.filter((suspect) => suspect.likeliest)
  const first = suspects[0]
  const words = suspects.map((suspect) => suspectText(suspect, file))
  return {
    code: "outline-not-closed",
    severity: "error",
    at: first ? placeOf(first, name) : { file: name, path: ["outline"] },
    message: disagreement(solution, file) ?? gapText(solution),
    expected: words.length > 0 ? `most likely ${words.join("; or as likely ")}` : undefined,
    mend:
      words.length > 1
        ? "The measurements explain it equally well: tape each of them again."
        : words.length === 1
          ? "Tape that again."
          : "No single measurement explains it: tape the room again with one more diagonal.",
  }
}

/** The check that disagrees with an outline that closes, if one does. */
function disagreement({ closes, residuals }: OutlineSolution, file: RoomFile): string | null {
  const worst = residuals
    .filter((each) => each.kind === "check" && !each.within)
    .sort((a, b) => Math.abs(b.residual) - Math.abs(a.residual))[0]
  if (!closes || !worst) return null
  return `The measurements do not agree: ${nameOf(worst, file)} reads ${mmText(worst.read)} mm, the others make it ${mmText(worst.found)} mm.`
}

function gapText({ misclosure }: OutlineSolution): string {
  if (misclosure.gap < 1)
    return "The outline crosses itself: a turn stands left for right, or a length is far out."
  return `The outline does not close: walked as written it ends ${mmText(misclosure.gap)} mm from where it began.`
}

function placeOf({ kind, index }: Suspect, file: string): At {
  if (kind === "check") return { file, path: ["diagonals", index, "length"] }
  return { file, path: ["outline", index, kind === "turn" ? "turn" : "length"] }
}

function suspectText(suspect: Suspect, file: RoomFile): string {
  const turn = suspect.kind === "turn"
  const figure = (value: number) => (turn ? `${fixed(value, 1)}°` : `${mmText(value)} mm`)
  return `${nameOf(suspect, file)}: ${suspect.mishap}, reads ${figure(suspect.read)}, would fit as ${figure(suspect.meant)}`
}
