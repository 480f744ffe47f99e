import { type BrokenCase, changed, replaced } from "./case.ts"

/** Keys and values that the format does not have. */
export const valueCases: BrokenCase[] = [
  replaced(
    "payments whose shares are not the whole",
    [
      "money.yaml",
      "overheadAndProfit: 15",
      "overheadAndProfit: 15\npayments: { within: 7, stages: [{ what: x, percent: 90, at: start }] }",
    ],
    "shares-not-whole money.yaml:4:32",
  ),
  replaced(
    "another rate of VAT for nothing",
    [
      "money.yaml",
      "because: ordinary work }",
      "because: ordinary work, except: [{ percent: 5, because: x }] }",
    ],
    "vat-of-nothing money.yaml:5:54",
  ),
  replaced(
    "a wrong type",
    ["rooms/c1.yaml", "heights: [2560]", "heights: [high]"],
    "wrong-type rooms/c1.yaml:13:13",
  ),
  replaced(
    "a figure in quotes",
    ["rooms/c1.yaml", "heights: [2560]", 'heights: ["2560"]'],
    "wrong-type rooms/c1.yaml:13:13",
  ),
  replaced(
    "a figure with its unit",
    ["house.yaml", "wall: 130", "wall: 130mm"],
    "wrong-type house.yaml:17:11",
  ),
  replaced(
    "a figure with a comma",
    ["job.yaml", "longest: 3300", 'longest: "3,300"'],
    "wrong-type job.yaml:8:19",
  ),
  replaced("yes for true", ["house.yaml", "occupied: true", "occupied: yes"], "wrong-type house.yaml:31:11"),
  replaced(
    "a list where one is meant",
    ["rooms/c1.yaml", "name: hall", "name: [hall]"],
    "wrong-type rooms/c1.yaml:2:7",
  ),
  replaced(
    "a figure for text",
    ["job.yaml", "title: One hall and one room", "title: 2027"],
    "wrong-type job.yaml:3:8",
  ),
  replaced("nothing behind a key", ["rooms/c1.yaml", "name: hall", "name:"], "wrong-type rooms/c1.yaml:2:1"),
  replaced(
    "not a number",
    ["rooms/c1.yaml", "heights: [2560]", "heights: [.nan]"],
    "wrong-type rooms/c1.yaml:13:13",
  ),
  replaced(
    "no end of a number",
    ["rooms/c1.yaml", "heights: [2560]", "heights: [.inf]"],
    "wrong-type rooms/c1.yaml:13:13",
  ),
  replaced(
    "a key misspelt",
    ["rooms/c1.yaml", "storey: ground", "story: ground"],
    "unknown-key rooms/c1.yaml:3:1",
  ),
  replaced(
    "an optional key misspelt",
    ["house.yaml", "finalExit: true", "finalexit: true"],
    "unknown-key house.yaml:18:5",
  ),
  replaced(
    "a key unlike any",
    ["rooms/c1.yaml", "use: hall", "use: hall\nwallpaper: blue"],
    "unknown-key rooms/c1.yaml:5:1",
  ),
  replaced("a trade misspelt", ["rooms/c1.yaml", "floors:", "flors:"], "unknown-key rooms/c1.yaml:18:3"),
  replaced(
    "a key of a trade misspelt",
    ["rooms/c2.yaml", "board: oak-14", "bord: oak-14"],
    "unknown-key rooms/c2.yaml:21:37",
  ),
  replaced(
    "a use that no trade has",
    ["products.yaml", "skirting: s", "skriting: s"],
    "unknown-key products.yaml:3:3",
  ),
  replaced("a key missing", ["rooms/c1.yaml", "use: hall\n", ""], "missing-key rooms/c1.yaml:1:1"),
  replaced(
    "a key missing in a mapping",
    ["rooms/c1.yaml", ", heightsFrom: deck", ""],
    "missing-key rooms/c1.yaml:5:1",
  ),
  replaced(
    "a key missing in a list",
    [
      "rooms/c1.yaml",
      "{ length: 1140, turn: right }\n  - { length: 4120, turn: right }\n  - { length: 1140, turn: right }",
      "{ length: 1140, turn: right }\n  - { turn: right }\n  - { length: 1140, turn: right }",
    ],
    "missing-key rooms/c1.yaml:9:5",
  ),
  replaced(
    "a word that is none of those allowed",
    ["rooms/c1.yaml", "use: hall", "use: hal"],
    "wrong-value rooms/c1.yaml:4:6",
  ),
  replaced(
    "a turn that is none",
    [
      "rooms/c2.yaml",
      "{ length: 4450, turn: right }\n  - { length: 3720, turn: right }\n  - { length: 4450, turn: right }",
      "{ length: 4450, turn: right }\n  - { length: 3720, turn: rigth }\n  - { length: 4450, turn: right }",
    ],
    "wrong-value rooms/c2.yaml:9:27",
  ),
  replaced(
    "a kind of product that is none",
    ["products.yaml", "kind: leaf", "kind: leef"],
    "wrong-value products.yaml:6:11",
  ),
  replaced(
    "VAT at a rate that is none",
    ["money.yaml", "percent: 20", "percent: 17.5"],
    "wrong-value money.yaml:5:17",
  ),
  replaced(
    "a negative size",
    ["rooms/c2.yaml", "width: 1800", "width: -1800"],
    "negative-size rooms/c2.yaml:19:61",
  ),
  replaced(
    "a negative thickness",
    ["products.yaml", "thickness: 35", "thickness: -35"],
    "negative-size products.yaml:12:16",
  ),
  replaced("more than all", ["job.yaml", "humidity: 55", "humidity: 155"], "too-big job.yaml:11:13"),
  replaced(
    "a part of a person",
    ["programme.yaml", "people: 2", "people: 1.5"],
    "wrong-type programme.yaml:10:43",
  ),
  replaced(
    "an outline of two walls",
    [
      "rooms/c2.yaml",
      "  - { length: 3720, turn: right }\n  - { length: 4450, turn: right }\n  - { length: 3720, turn: right }\ndiagonals:\n  - { from: 1, to: 3, length: 5800 }",
      "  - { length: 3720, turn: right }",
    ],
    "too-few rooms/c2.yaml:8:3",
    "no-such-wall rooms/c2.yaml:15:35",
  ),
  replaced("no text", ["job.yaml", "the owners", '""'], "too-short job.yaml:4:9"),
  replaced(
    "two lines where one is meant",
    ["job.yaml", "client: the owners", "client: |\n  the\n  owners"],
    "line-break job.yaml:4:9",
  ),
  replaced(
    "an id with a path in it",
    ["rooms/c1.yaml", "id: C1", "id: ../../etc"],
    "bad-form rooms/c1.yaml:1:5",
  ),
  replaced(
    "a ref with a path in it",
    ["job.yaml", "ref: tiny", "ref: ../tiny"],
    "bad-form job.yaml:1:6",
    "ref-differs job.yaml:1:6",
  ),
  replaced(
    "a code that could be guessed",
    ["job.yaml", "code: 7k3m9x2q", "code: job1"],
    "bad-form job.yaml:2:7",
  ),
  replaced(
    "a hosted address without https",
    ["job.yaml", "https://packs", "http://packs"],
    "bad-form job.yaml:6:9",
  ),
  replaced(
    "a day in another order",
    ["programme.yaml", "start: 2027-03-01", "start: 01/03/2027"],
    "bad-form programme.yaml:1:8",
  ),
  replaced(
    "a day that is none",
    ["programme.yaml", "start: 2027-03-01", "start: 2027-02-30"],
    "day-impossible programme.yaml:1:8",
  ),
  replaced(
    "29 February in a common year",
    ["house.yaml", "on: 2027-02-10", "on: 2027-02-29"],
    "day-impossible house.yaml:32:17",
  ),
  replaced(
    "a time of the day that is none",
    ["programme.yaml", '"16:30"', '"24:30"'],
    "bad-form programme.yaml:5:26",
  ),
  replaced(
    "a time zone that is none",
    ["job.yaml", "client:", "zone: Europe/Nowhere\nclient:"],
    "unknown-zone job.yaml:4:7",
  ),
  replaced(
    "money without quotes",
    ["products.yaml", 'price: "62.00"', "price: 62.00"],
    "wrong-type products.yaml:18:12",
  ),
  replaced(
    "money that would lose its nought",
    ["money.yaml", '"32.00"', "1.10"],
    "wrong-type money.yaml:2:31",
  ),
  replaced(
    "money with a sign of its currency",
    ["money.yaml", '"32.00"', '"£32.00"'],
    "bad-form money.yaml:2:31",
  ),
  replaced(
    "a nought in front",
    ["rooms/c2.yaml", "fromLeft: 2150", "fromLeft: 02150"],
    "number-form rooms/c2.yaml:17:42",
  ),
  replaced("an exponent", ["rooms/c2.yaml", "sill: 900", "sill: 9e2"], "number-form rooms/c2.yaml:19:87"),
  replaced("base sixteen", ["house.yaml", "deck: 0", "deck: 0x10"], "number-form house.yaml:5:11"),
  changed(
    "many mistakes at once",
    [
      { file: "tiny/job.yaml", find: "humidity: 55", replace: "humidty: 55" },
      { file: "tiny/house.yaml", find: "base: timber", replace: "base: tiber" },
      { file: "tiny/rooms/c1.yaml", find: "use: hall", replace: "use: 3" },
      { file: "tiny/money.yaml", find: "contingency: 5", replace: "contingency: five" },
    ],
    "unknown-key tiny/job.yaml:11:3",
    "wrong-value tiny/house.yaml:7:11",
    "wrong-value tiny/rooms/c1.yaml:4:6",
    "wrong-type tiny/money.yaml:4:14",
  ),
]

/** Figures in metres or centimetres where millimetres are asked. */
export const unitCases: BrokenCase[] = [
  replaced(
    "a ceiling in metres",
    ["rooms/c1.yaml", "heights: [2560]", "heights: [2.4]"],
    "unit-slip rooms/c1.yaml:13:13",
  ),
  replaced(
    "a ceiling in centimetres",
    ["rooms/c1.yaml", "heights: [2560]", "heights: [240]"],
    "unit-slip rooms/c1.yaml:13:13",
  ),
  replaced(
    "a run in metres",
    [
      "rooms/c2.yaml",
      "  - { length: 3720, turn: right }\ndiagonals:",
      "  - { length: 3.72, turn: right }\ndiagonals:",
    ],
    "unit-slip rooms/c2.yaml:11:15",
  ),
  replaced(
    "a place along a wall in metres",
    ["rooms/c2.yaml", "fromLeft: 1200", "fromLeft: 1.2"],
    "unit-slip rooms/c2.yaml:19:48",
  ),
  replaced("a deck in metres", ["house.yaml", "deck: 0", "deck: 2.61"], "unit-slip house.yaml:5:11"),
  replaced(
    "a wall's thickness in metres",
    ["house.yaml", "wall: 130", "wall: 0.13"],
    "unit-slip house.yaml:17:11",
  ),
  replaced("a doorway in centimetres", ["house.yaml", "[838]", "[83.8]"], "unit-slip house.yaml:15:14"),
  replaced(
    "what can be carried in metres",
    ["job.yaml", "longest: 3300", "longest: 3.3"],
    "unit-slip job.yaml:8:19",
  ),
  replaced(
    "a whole room in centimetres",
    [
      "rooms/c2.yaml",
      "  - { length: 4450, turn: right }\n  - { length: 3720, turn: right }\n  - { length: 4450, turn: right }\n  - { length: 3720, turn: right }",
      "  - { length: 445, turn: right }\n  - { length: 372, turn: right }\n  - { length: 445, turn: right }\n  - { length: 372, turn: right }",
    ],
    "unit-slip rooms/c2.yaml:8:15",
  ),
  changed(
    "a board in metres in the catalogue",
    [{ file: "catalogue.yaml", find: "length: 1860", replace: "length: 1.86" }],
    "unit-slip catalogue.yaml:9:13",
  ),
]
