import type { Point } from "../polygon/point.ts"
import type { Region } from "../polygon/region.ts"
import type { Degrees, Mm } from "../units.ts"

/** Widths of line on paper, mm (the series of ISO 128-2: each a step of root two). */
export type LineWidth = 0.18 | 0.25 | 0.35 | 0.5 | 0.7

/** How a line is broken: hidden edges dashed, centre lines and no-fix zones chained, helping lines dotted. */
export type Dash = "continuous" | "dashed" | "chain" | "dotted"

/** Black strokes, and greys only as fills. */
export type Fill = "none" | "white" | "light" | "mid" | "black"

/** How a line is drawn; continuous unless said. */
export interface Stroke {
  width: LineWidth
  dash?: Dash
}

/** A straight line between two points. */
export interface LineShape {
  kind: "line"
  from: Point
  to: Point
  stroke: Stroke
}

/** An open line through several points. */
export interface PolylineShape {
  kind: "polyline"
  points: readonly Point[]
  stroke: Stroke
}

/** A closed figure, with holes if it has any; without a stroke it is only filled. */
export interface PolygonShape {
  kind: "polygon"
  points: readonly Point[]
  holes?: readonly (readonly Point[])[]
  stroke?: Stroke
  fill?: Fill
}

/** An arc of a circle, walked anticlockwise from one angle to the other (0 = to the right); 0 to 360 is the whole circle. */
export interface ArcShape {
  kind: "arc"
  centre: Point
  radius: Mm
  from: Degrees
  to: Degrees
  stroke: Stroke
}

/** An upright box, from its lower left corner. */
export interface BoxShape {
  kind: "box"
  at: Point
  width: Mm
  height: Mm
  stroke?: Stroke
  fill?: Fill
}

/** A figure hatched with thin parallel lines; spacing is on paper. */
export interface HatchShape {
  kind: "hatch"
  region: Region
  /** Distance between the lines on paper, mm. */
  spacing: Mm
  /** Slope of the lines, degrees anticlockwise from the horizontal. */
  angle: Degrees
  width?: LineWidth
  dash?: Dash
}

/** Where a text stands of its point. */
export type Anchor = "start" | "middle" | "end"

/** Lettering; a line break (`\n`) starts a new line. */
export interface TextShape {
  kind: "text"
  at: Point
  text: string
  /** Height of its figures and capitals on paper, mm, whatever the scale: at least 2.5; 3.5 for figures to work from. */
  height: Mm
  /** The point lies at its left end, middle (unless said) or right end. */
  anchor?: Anchor
  /** Turned anticlockwise, degrees. */
  angle?: Degrees
  bold?: boolean
  /** Stays where it is put; other texts give way to it, and move if they would lie over one another. */
  fixed?: boolean
  /** If it has to move well away, a thin line leads back to its point. */
  leader?: boolean
  /** A white ground behind it, so that lines do not run through it. */
  masked?: boolean
}

/** A dimension line with oblique ticks and projection lines; its text stands above the line. */
export interface DimensionShape {
  kind: "dimension"
  from: Point
  to: Point
  /** How far the line lies from the two points, on paper, mm: positive to the left as seen walking from the first to the second. */
  offset: Mm
  text: string
  /** Height of the figures on paper, mm; 3.5 unless said. */
  height?: Mm
}

/** A scale bar with the scale in words; stands under the drawing unless given a place. */
export interface ScaleBarShape {
  kind: "scale-bar"
  at?: Point
}

/** Anything that can be drawn, in millimetres of the real thing: x to the right, y up. */
export type Shape =
  | LineShape
  | PolylineShape
  | PolygonShape
  | ArcShape
  | BoxShape
  | HatchShape
  | TextShape
  | DimensionShape
  | ScaleBarShape

/** A drawing in millimetres of the real thing; later shapes lie over earlier ones, texts over all. */
export interface Drawing {
  /** Its name for the reader and for a screen reader. */
  title: string
  /** What it shows, in a sentence, for those who cannot see it. */
  description: string
  shapes: readonly Shape[]
}
