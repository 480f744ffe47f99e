import type { RoomFile } from "../intake/schema/room.ts"
import type { Finding } from "../kernels/finding.ts"
import type { Point } from "../kernels/polygon/point.ts"
import { edgesOf } from "../kernels/polygon/region.ts"
import { type SectionSide, type SectionSolution, solveSection } from "../kernels/section.ts"
import type { SectionFigure } from "../kernels/section-shape.ts"
import { fixed, type Mm, mmText } from "../kernels/units.ts"
import type { Rules } from "../rulebook/rules.ts"
import { inwardNormal } from "./plan-geometry.ts"
import type { SectionTrust } from "./room.ts"

type Ceiling = RoomFile["ceiling"]
type Slope = Ceiling["slopes"][number]

/** A room's ceiling with its section adjusted, how far it can be trusted, and what does not agree. */
export interface MeasuredSection {
  ceiling: Ceiling
  trust: SectionTrust | null
  findings: Finding[]
}

interface SectionTask {
  file: RoomFile
  at: string
  rules: Rules
  corners: readonly Point[]
}

/** Slopes that are surveyed in one section, by their place in the file. */
interface Cut {
  left: number
  right?: number
  /** The widths across belong to it. */
  whole: boolean
}

/** Two slopes face each other if their inward directions differ from opposite by less than about 8 degrees. */
const facing = -0.99

/**
 * The sections of a sloping ceiling, each figure against the others: dwarf walls, lengths up the slopes, pitches, height of the
 * flat, and the widths of flat and floor square across. Figures that agree are adjusted by least squares; what disagrees
 * beyond its tolerance is a finding, with every figure that would explain it alone.
 */
export function measuredSection(task: SectionTask): MeasuredSection {
  const { file } = task
  const cuts = cutsOf(task)
  if (cuts.length === 0) return { ceiling: file.ceiling, trust: null, findings: [] }
  const solved = cuts.map((cut) => ({ cut, solution: solutionOf(cut, task) }))
  const residuals = solved.flatMap(({ cut, solution }) =>
    solution.residuals.map((each) => ({
      what: figureName(each.figure, cut, file.ceiling),
      taped: each.read,
      adjusted: each.found,
      residual: each.residual,
      unit: unitOf(each.figure),
    })),
  )
  const whole = solved.find(({ cut }) => cut.whole)
  return {
    ceiling: solved.reduce((ceiling, { cut, solution }) => adjustedBy(ceiling, cut, solution), file.ceiling),
    trust: { closure: whole?.solution.misclosure ?? null, residuals },
    findings: solved.flatMap(({ cut, solution }) =>
      solution.fixed && !solution.ok ? [sectionFinding(cut, solution, task)] : [],
    ),
  }
}

/**
 * One cut through a slope or two that face each other; with other slopes each is held against its own figures alone.
 * None where nothing was taped beyond what the shape needs.
 */
function cutsOf({ file, corners }: SectionTask): Cut[] {
  const { slopes: all, section } = file.ceiling
  const slopes = all.filter((slope) => slope.wall <= corners.length)
  const isChecked = section !== undefined || slopes.some((slope) => slope.along !== undefined)
  if (!isChecked || slopes.length < all.length) return []
  if (slopes.length === 1) return [{ left: 0, whole: true }]
  if (slopes.length === 2) {
    const [a, b] = slopes.map((slope) => inwardOf(slope, corners))
    if (a!.x * b!.x + a!.y * b!.y < facing) return [{ left: 0, right: 1, whole: true }]
  }
  return slopes.map((_, index) => ({ left: index, whole: false }))
}

function solutionOf(cut: Cut, { file, rules, corners }: SectionTask): SectionSolution {
  const { heights, slopes, section } = file.ceiling
  const left = slopes[cut.left]!
  const right = cut.right === undefined ? undefined : slopes[cut.right]!
  const mean = heights.reduce((sum, height) => sum + height, 0) / heights.length
  const spread = (Math.max(...heights) - Math.min(...heights)) / 2
  const across = section?.floor ?? widthAcross(left, corners)
  return solveSection({
    left: sideOf(left),
    right: right ? sideOf(right) : { sloped: false },
    ...(cut.whole
      ? {
          ...(section?.flat === undefined ? {} : { flat: section.flat }),
          ...(across ? { floor: across } : {}),
        }
      : { flat: 0 }),
    ceiling: mean,
    tolerances: { length: Math.max(file.measured.tape, spread), pitch: rules.value("survey-pitch") },
  })
}

function sideOf({ dwarf, along, pitch }: Slope): SectionSide {
  return { sloped: true, wall: dwarf, pitch, ...(along === undefined ? {} : { slope: along }) }
}

/** Distance from the middle of a slope's wall straight across to what stands opposite, mm. */
function widthAcross(slope: Slope, corners: readonly Point[]): Mm | undefined {
  const [start, end] = endsOf(slope, corners)
  const from = { x: (start.x + end.x) / 2, y: (start.y + end.y) / 2 }
  const way = inwardNormal(start, end)
  const hits = edgesOf(corners).flatMap((edge) => {
    const run = { x: edge.to.x - edge.from.x, y: edge.to.y - edge.from.y }
    const turn = way.x * run.y - way.y * run.x
    const to = { x: edge.from.x - from.x, y: edge.from.y - from.y }
    const reach = (to.x * run.y - to.y * run.x) / turn
    const share = (to.x * way.y - to.y * way.x) / turn
    return Number.isFinite(reach) && reach > 1 && share >= 0 && share <= 1 ? [reach] : []
  })
  return hits.length > 0 ? Math.min(...hits) : undefined
}

/** The ceiling with a cut's figures as adjusted, where they agree. */
function adjustedBy(ceiling: Ceiling, cut: Cut, solution: SectionSolution): Ceiling {
  if (!solution.ok) return ceiling
  const found = (figure: SectionFigure) =>
    solution.residuals.find((each) => each.figure === figure)?.found ?? Number.NaN
  const slopes = ceiling.slopes.map((slope, index) => {
    const side = index === cut.left ? "left" : index === cut.right ? "right" : null
    return side ? { ...slope, dwarf: found(`${side} wall`), pitch: found(`${side} pitch`) } : slope
  })
  if (!cut.whole) return { ...ceiling, slopes }
  const mean = ceiling.heights.reduce((sum, height) => sum + height, 0) / ceiling.heights.length
  const lift = found("ceiling") - mean
  return { ...ceiling, slopes, heights: ceiling.heights.map((height) => height + lift) }
}

function sectionFinding(cut: Cut, solution: SectionSolution, { file, at }: SectionTask): Finding {
  const { suspects, residuals } = solution
  const words = suspects.map(
    ({ figure, read, meant }) =>
      `${figureName(figure, cut, file.ceiling)}: reads ${figureText(figure, read)}, would fit as ${figureText(figure, meant)}`,
  )
  const worst = residuals.find((each) => !each.within)!
  const first = suspects[0]
  return {
    code: "section-not-closed",
    severity: "error",
    at: { file: at, path: first ? pathOf(first.figure, cut) : ["ceiling"] },
    message: `The slopes' figures do not agree: ${figureName(worst.figure, cut, file.ceiling)} reads ${figureText(worst.figure, worst.read)}, the others make it ${figureText(worst.figure, worst.found)}.`,
    expected: words.length > 0 ? `most likely ${words.join("; or as likely ")}` : undefined,
    mend:
      words.length > 0
        ? "Tape what is named again."
        : "No single figure explains it: tape the section again.",
  }
}

function pathOf(figure: SectionFigure, cut: Cut): (string | number)[] {
  if (figure === "ceiling") return ["ceiling", "heights", 0]
  if (figure === "flat") return ["ceiling", "section"]
  if (figure === "floor") return ["ceiling"]
  const keys = { wall: "dwarf", slope: "along", pitch: "pitch" }
  const [side, part] = figure.split(" ") as ["left" | "right", keyof typeof keys]
  if (side === "right" && cut.right === undefined) return ["ceiling", "heights", 0]
  return ["ceiling", "slopes", (side === "left" ? cut.left : cut.right)!, keys[part]]
}

function figureName(figure: SectionFigure, cut: Cut, { slopes, section }: Ceiling): string {
  if (figure === "ceiling") return "height of the level ceiling"
  if (figure === "flat") return "width of the level ceiling"
  if (figure === "floor") return section?.floor ? "width of the floor" : "width of the floor by the outline"
  const names = {
    wall: "height of dwarf wall",
    slope: "length up the slope over wall",
    pitch: "pitch over wall",
  }
  const [side, part] = figure.split(" ") as ["left" | "right", keyof typeof names]
  const slope = side === "left" ? slopes[cut.left] : slopes[cut.right ?? -1]
  return slope ? `${names[part]} ${slope.wall}` : "height of the wall opposite the slope"
}

function unitOf(figure: SectionFigure): "mm" | "°" {
  return figure.endsWith("pitch") ? "°" : "mm"
}

function figureText(figure: SectionFigure, value: number): string {
  return unitOf(figure) === "°" ? `${fixed(value, 1)}°` : `${mmText(value)} mm`
}

function endsOf({ wall }: Slope, corners: readonly Point[]): [Point, Point] {
  return [corners[wall - 1]!, corners[wall % corners.length]!]
}

function inwardOf(slope: Slope, corners: readonly Point[]): Point {
  return inwardNormal(...endsOf(slope, corners))
}
