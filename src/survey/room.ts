import type { DoorEntry, HouseFile } from "../intake/schema/house.ts"
import type { RoomFile } from "../intake/schema/room.ts"
import type { Finding } from "../kernels/finding.ts"
import type { Point } from "../kernels/polygon/point.ts"
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
  kind: "flat" | "slope" | "dormer"
  /** The wall a slope rises from. */
  wall?: number
  pitch: Degrees
  /** Plan outline of the part, mm. */
  plan: Point[]
  /** True area on the slope before openings, m2. */
  area: SquareMetres
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
  /** The check length that would fix it: from corner to corner. */
  needs?: { from: number; to: number }
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
  /** m2 inside the outline; less every hole; and where a floor is laid (holes with a floor running through count in). */
  area: SquareMetres
  floorArea: SquareMetres
  perimeter: Mm
  ceiling: {
    parts: CeilingPart[]
    lowest: Mm
    highest: Mm
    flatArea: SquareMetres
    slopeArea: SquareMetres
    obstacles: RoomFile["ceiling"]["obstacles"]
  }
  /** m2 of wall before and after openings. */
  wallGross: SquareMetres
  wallNet: SquareMetres
  /** Floor area with more than 1.5 m and 2.0 m over the finished floor, m2; filled in with the floor build-up that is passed. */
  headroom(over: Mm, floorBuildUp: Mm): SquareMetres
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
