/** A fact from outside, with where it comes from. */
export interface GeometryFact<Value> {
  what: string
  value: Value
  source: string
}

/** Area by coordinates, worked in print: corners as [east, north] in feet, area in square feet to five significant digits. */
export const areaByCoordinates: GeometryFact<{ corners: [number, number][]; area: number }>[] = [
  {
    what: "parcel A C F E of a crossing-loop traverse: sums of cross products 877,890 and 1,378,989, area 250,550",
    value: {
      corners: [
        [1000, 600],
        [1209.288, 254.542],
        [566.876, 97.543],
        [397.969, 470.303],
      ],
      area: 250_550,
    },
    source:
      "Open Access Surveying Library, self-study problems on traverse area, problem 2 with solution (read)",
  },
]

/** One line of a traverse: bearing as [degrees, minutes, seconds] from north or south towards east or west; feet. */
export interface TraverseLine {
  name: string
  from: "N" | "S"
  bearing: [number, number, number]
  towards: "E" | "W"
  length: number
  /** As printed: latitude (north positive) and departure (east positive), raw and adjusted, and the adjusted length. */
  latitude: number
  departure: number
  adjustedLatitude: number
  adjustedDeparture: number
  adjustedLength: number
}

/** A closed traverse adjusted by the compass rule, worked in print to 0.001 ft. */
export const compassTraverse: GeometryFact<{
  lines: TraverseLine[]
  latitudeError: number
  departureError: number
}> = {
  what: "bearing traverse A B C D, closure +0.083 in latitude, +0.075 in departure, perimeter 1347.57",
  value: {
    lines: [
      line("AB", ["S", [68, 5, 35], "W"], [472.68, -176.357, -438.548, -176.386, -438.574, 472.715]),
      line("BC", ["N", [19, 46, 0], "W"], [216.13, 203.395, -73.093, 203.382, -73.105, 216.122]),
      line("CD", ["N", [45, 55, 20], "E"], [276.52, 192.357, 198.651, 192.34, 198.635, 276.479]),
      line("DA", ["S", [54, 59, 15], "E"], [382.24, -219.312, 313.065, -219.336, 313.044, 382.237]),
    ],
    latitudeError: 0.083,
    departureError: 0.075,
  },
  source:
    "Open Access Surveying Library, Traverse Computations, chapter E, traverse with bearings (figure E-6) (read)",
}

function line(
  name: string,
  [from, bearing, towards]: ["N" | "S", [number, number, number], "E" | "W"],
  [length, latitude, departure, adjustedLatitude, adjustedDeparture, adjustedLength]: number[],
): TraverseLine {
  const adjusted = {
    adjustedLatitude: adjustedLatitude!,
    adjustedDeparture: adjustedDeparture!,
    adjustedLength: adjustedLength!,
  }
  return {
    name,
    from,
    bearing,
    towards,
    length: length!,
    latitude: latitude!,
    departure: departure!,
    ...adjusted,
  }
}
