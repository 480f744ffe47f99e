const LISTS =
  "published list of bank holidays in England and Wales for the year (as quoted by public notices)"
const RULE = "computed from the published rules; no official list was at hand"
const COUNT = "counted on a wall calendar less the bank holidays of the list"

/** Bank holidays of England and Wales. */
export const BANK_HOLIDAYS = [
  {
    year: 2026,
    dates: [
      "2026-01-01 thursday",
      "2026-04-03 friday",
      "2026-04-06 monday",
      "2026-05-04 monday",
      "2026-05-25 monday",
      "2026-08-31 monday",
      "2026-12-25 friday",
      "2026-12-28 monday",
    ],
    source: LISTS,
  },
  {
    year: 2027,
    dates: [
      "2027-01-01 friday",
      "2027-03-26 friday",
      "2027-03-29 monday",
      "2027-05-03 monday",
      "2027-05-31 monday",
      "2027-08-30 monday",
      "2027-12-27 monday",
      "2027-12-28 tuesday",
    ],
    source: LISTS,
  },
  {
    year: 2028,
    dates: [
      "2028-01-03 monday",
      "2028-04-14 friday",
      "2028-04-17 monday",
      "2028-05-01 monday",
      "2028-05-29 monday",
      "2028-08-28 monday",
      "2028-12-25 monday",
      "2028-12-26 tuesday",
    ],
    source: RULE,
  },
]

/** Good Friday and Easter Monday 2027 as one public data file has them: wrong, and never to appear. */
export const WRONG_EASTER_2027 = ["2027-04-02", "2027-04-05"]

/** Easter Sundays. */
export const EASTERS = [
  { year: 1818, date: "1818-03-22", source: "earliest possible Easter; from memory" },
  { year: 1943, date: "1943-04-25", source: "latest possible Easter; from memory" },
  {
    year: 1961,
    date: "1961-04-02",
    source: "worked example, Meeus, Astronomical Algorithms, chapter 8; from memory",
  },
  { year: 2000, date: "2000-04-23", source: "from memory" },
  { year: 2024, date: "2024-03-31", source: "from memory" },
  { year: 2026, date: "2026-04-05", source: "published lists of bank holidays" },
  { year: 2027, date: "2027-03-28", source: "published lists of bank holidays" },
  { year: 2028, date: "2028-04-16", source: "published lists of bank holidays" },
]

/** Weekdays less bank holidays, by month. */
export const WORKING_DAYS = [
  { year: 2026, months: [21, 20, 22, 20, 19, 22, 23, 20, 22, 22, 21, 21], total: 253, source: COUNT },
  { year: 2027, months: [20, 20, 21, 22, 19, 22, 22, 21, 22, 21, 22, 21], total: 253, source: COUNT },
  { year: 2028, months: [20, 21, 23, 18, 21, 22, 21, 22, 21, 22, 22, 19], total: 252, source: COUNT },
]

/** Working days added to a date, the day after counting as 1. */
export const DATE_ADDS = [
  { from: "2026-04-02", days: 10, to: "2026-04-20", source: COUNT },
  { from: "2026-12-23", days: 5, to: "2027-01-04", source: COUNT },
  { from: "2027-12-22", days: 5, to: "2027-12-31", source: COUNT },
]

const CLOCKS =
  "Summer Time Order 2002: clocks change at 01:00 Greenwich mean time on the last Sundays of March and October"

/** Elapsed hours through clock changes in London. */
export const CLOCK_CHANGES = [
  { from: "2026-03-28T16:00", hours: 24, to: "2026-03-29T17:00", source: CLOCKS },
  { from: "2026-10-24T16:00", hours: 24, to: "2026-10-25T15:00", source: CLOCKS },
  { from: "2027-03-27T12:00", hours: 48, to: "2027-03-29T13:00", source: CLOCKS },
  { from: "2026-06-01T16:00", hours: 24, to: "2026-06-02T16:00", source: CLOCKS },
  { from: "2026-03-01T08:00", hours: 24 * 35, to: "2026-04-05T09:00", source: CLOCKS },
]
