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

/** One leg of a traverse as printed: length; latitude (north positive) and departure (east positive), raw and adjusted. */
export interface PrintedLeg {
  name: string
  /** Heading as an azimuth, degrees clockwise from north. */
  azimuth: number
  length: number
  latitude: number
  departure: number
  adjustedLatitude: number
  /** Null where the copy read is cut off, or the print rounds the other way to make its column sum to nothing. */
  adjustedDeparture: number | null
}

/** A closed traverse adjusted by the compass rule, worked in print. */
export interface PrintedTraverse {
  legs: PrintedLeg[]
  latitudeError: number
  departureError: number
  perimeter: number
  /** Decimals of the raw latitudes and departures, and of the adjusted ones. */
  decimals: { raw: number; adjusted: number }
}

/** Compass rule worked in print: the adjustment starts from latitudes and departures already rounded to 0.001. */
export const compassTraverses: GeometryFact<PrintedTraverse>[] = [
  {
    what: "traverse A B C D of 267.5, closure +0.285 in latitude and -0.311 in departure",
    value: {
      legs: [
        leg("AB", 76, [80.4, 19.451, 78.012, 19.3653], 78.1055),
        leg("BC", 180 - 36, [46.3, -37.457, 27.214, -37.5063], 27.2678),
        leg("CD", 180 + 61, [72.8, -35.294, -63.672, -35.3716], -63.5874),
        leg("DA", 360 - 38, [68, 53.585, -41.865, 53.5126], null),
      ],
      latitudeError: 0.285,
      departureError: -0.311,
      perimeter: 267.5,
      decimals: { raw: 3, adjusted: 4 },
    },
    source:
      "teaching slides 'Compass Rule: Adjustment of Bearing and Distance of a Closed Traverse' (read; the departure of DA is cut off and follows from the printed sum)",
  },
  {
    what: "bearing traverse A B C D of 1347.57 ft, closure +0.083 in latitude and +0.075 in departure",
    value: {
      legs: [
        leg("AB", 180 + dms(68, 5, 35), [472.68, -176.357, -438.548, -176.386], -438.574),
        leg("BC", 360 - dms(19, 46, 0), [216.13, 203.395, -73.093, 203.382], -73.105),
        leg("CD", dms(45, 55, 20), [276.52, 192.357, 198.651, 192.34], null),
        leg("DA", 180 - dms(54, 59, 15), [382.24, -219.312, 313.065, -219.336], 313.044),
      ],
      latitudeError: 0.083,
      departureError: 0.075,
      perimeter: 1347.57,
      decimals: { raw: 3, adjusted: 3 },
    },
    source:
      "Open Access Surveying Library, Traverse Computations, chapter E, figure E-6 (read; it prints 198.635 for the departure of CD where its own figures give 198.6356)",
  },
]

function leg(
  name: string,
  azimuth: number,
  [length, latitude, departure, adjustedLatitude]: [number, number, number, number],
  adjustedDeparture: number | null,
): PrintedLeg {
  return { name, azimuth, length, latitude, departure, adjustedLatitude, adjustedDeparture }
}

function dms(degrees: number, minutes: number, seconds: number): number {
  return degrees + minutes / 60 + seconds / 3600
}
