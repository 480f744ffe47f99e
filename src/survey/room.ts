import type { DoorEntry, HouseFile } from "../intake/schema/house.ts"
import type { RoomFile } from "../intake/schema/room.ts"
import type { Finding } from "../kernels/finding.ts"
import type { Point } from "../kernels/polygon/point.ts"
import type { Region } from "../kernels/polygon/region.ts"
import type { Degrees, Mm, SquareMetres } from "../kernels/units.ts"

export type Storey = HouseFile["storeys"][number]
export type Stair = HouseFile["stairs"][number]

/** A doorway as it stands in one wall of one room. */
export interface DoorInWall {
  door: DoorEntry
  wall: number
  /** Left end of the wall to the near side of the clear opening between linings, mm. */
  fromLeft: Mm
  /** Widest measured width between linings, mm. */
  width: Mm
  /** Greatest measured height, mm, from the room's datum. */
  height: Mm
}

/** A window, roof window or hatch as it stands in a room. */
export type WindowInRoom = RoomFile["windows"][number]

/** One wall of a room: a run of its outline with what stands in it. */
export interface Wall {
  /** 1 for the wall of the entry, then clockwise seen from above. */
  number: number
  is: RoomFile["outline"][number]["is"]
  name?: string
  /** Length as adjusted, mm. */
  length: Mm
  /** Length as taped, mm. */
  taped: Mm
  /** Left and right end seen from inside, plan mm. */
  start: Point
  end: Point
  /** Inside angle of the room at the wall's left and right end, degrees: under 180 an internal corner, over 180 an external one. */
  angleAtStart: Degrees
  angleAtEnd: Degrees
  /** True elevation seen from inside: x from the left end, y from the room's datum, mm, anticlockwise from the bottom left. */
  elevation: Point[]
  /** m2 before and after taking out all openings. */
  gross: SquareMetres
  net: SquareMetres
  doors: DoorInWall[]
  /** Windows and hatches in the wall itself (roof windows stand in slopes). */
  windows: WindowInRoom[]
}

/** One level or sloping part of a ceiling. */
export interface CeilingPart {
  kind: "flat" | "slope" | "dormer" | "bulkhead"
  /** The wall a slope rises from. */
  wall?: number
  pitch: Degrees
  /** Plan outline of the part, mm. */
  plan: Point[]
  /** True area on the slope before openings, m2. */
  area: SquareMetres
  /** The same less roof windows, m2. */
  net: SquareMetres
  /** Area on the plan, m2, and mean height over it from the room's datum, mm. */
  planArea: SquareMetres
  meanHeight: Mm
}

/** The plastered or lined faces round an opening between its frame and the room. */
export interface Reveal {
  opening: string
  wall: number
  inSlope: boolean
  /** Length round the faces that are there: sides and head of a window, all four of a roof window or hatch, mm. */
  girth: Mm
  depth: Mm
  /** m2. */
  area: SquareMetres
}

/** A sloping room's section against its taped figures. */
export interface SectionTrust {
  /** Floor width less flat and slopes as read, mm; null where not all were taped. */
  closure: Mm | null
  residuals: ShapeTrust["residuals"]
}

/** A hole, column or cupboard on the plan. */
export interface HoleInFloor {
  id: string
  name: string
  /** Four corners on the plan, mm. */
  outline: Point[]
  floored: boolean
  /** Clear width along the wall it is placed from, and depth away from it, mm. */
  width: Mm
  depth: Mm
  wall: number
}

/** How far the measured shape can be trusted. */
export interface ShapeTrust {
  /** False if the measurements leave the shape open. */
  fixed: boolean
  /** The check lengths that would fix it, from corner to corner, the most telling first; empty if it is fixed. */
  needs: { from: number; to: number }[]
  /** Most that a distance between corners may vary as measured, mm. */
  looseness: Mm
  /** Raw gap of the walk with the turns as written, mm. */
  closure: Mm
  /** Largest residual of any length or diagonal after adjustment, mm. */
  worstResidual: Mm
  /** One line a measurement: what, as taped, as adjusted, difference. */
  residuals: { what: string; taped: number; adjusted: number; residual: number; unit: "mm" | "°" }[]
}

/** A room with its true geometry: plan mm with x to the right and y up, wall 1 along +x from the origin, the inside below it. */
export interface Room {
  id: string
  name: string
  use: RoomFile["use"]
  storey: Storey
  /** The file it was read from, relative to the job folder. */
  file: string
  measured: RoomFile["measured"]
  /** Corners clockwise; corner n (from 1) is the left end of wall n. */
  outline: Point[]
  walls: Wall[]
  holes: HoleInFloor[]
  trust: ShapeTrust
  /** Null where the ceiling has no slope. */
  section: SectionTrust | null
  /** m2 inside the outline; less every hole; and where a floor is laid (holes with a floor running through count in). */
  area: SquareMetres
  floorArea: SquareMetres
  perimeter: Mm
  ceiling: {
    parts: CeilingPart[]
    /** Height of the level part at each point as taped, mm from the room's datum. */
    heights: Mm[]
    lowest: Mm
    highest: Mm
    flatArea: SquareMetres
    slopeArea: SquareMetres
    /** Slopes less roof windows, m2. */
    slopeNet: SquareMetres
    obstacles: RoomFile["ceiling"]["obstacles"]
  }
  /** m2 of wall before and after openings. */
  wallGross: SquareMetres
  wallNet: SquareMetres
  /** Floor area with more than a height (1.5 m, 2.0 m) over the finished floor, m2, with the floor build-up that is passed. */
  headroom(over: Mm, floorBuildUp: Mm): SquareMetres
  /** The same area on the plan. */
  headroomPlan(over: Mm, floorBuildUp: Mm): Region[]
  /** Air from the room's datum to the ceiling, m3. */
  volume: number
  reveals: Reveal[]
  /** Joists where they are known in this room: the wall they run along, centres, and that wall to the first joist, mm. */
  joists?: { wall: number; centres?: Mm; firstFrom?: Mm }
  doors: DoorInWall[]
  windows: WindowInRoom[]
  hidden: RoomFile["hidden"]
  readings: RoomFile["readings"]
  photos: RoomFile["photos"]
  stays: string[]
  notes: string[]
  findings: Finding[]
}

/** The house as surveyed: storeys from the lowest up, stairs, doorways, rooms. */
export interface House {
  lowestGround: Mm
  built?: number
  occupied: boolean
  storeys: Storey[]
  stairs: Stair[]
  doors: DoorEntry[]
  rooms: Room[]
}
