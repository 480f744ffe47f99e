import { type BrokenCase, changed, replaced } from "./case.ts"

/** A variation of the job `tiny` with these lines after its head. */
function varied(name: string, lines: string[], ...expected: string[]): BrokenCase {
  const head = ["variations:", "  - id: V1", "    on: 2027-02-01", "    asked: client", "    what: change"]
  const text = `${[...head, ...lines.map((line) => `    ${line}`)].join("\n")}\n`
  return changed(name, [{ file: "tiny/variations.yaml", text }], ...expected)
}

/** Ids that nothing has, products of another kind, walls beyond the outline. */
export const referenceCases: BrokenCase[] = [
  replaced(
    "a storey that is none",
    ["rooms/c1.yaml", "storey: ground", "storey: grond"],
    "unknown-reference rooms/c1.yaml:3:9",
  ),
  replaced(
    "a doorway's room that is none",
    ["house.yaml", "between: [outside, C1]", "between: [outside, C9]"],
    "unknown-reference house.yaml:11:24",
  ),
  replaced(
    "a doorway that is none",
    ["rooms/c1.yaml", "door: d-living", "door: d-livin"],
    "door-not-placed house.yaml:21:15",
    "unknown-reference rooms/c1.yaml:16:13",
  ),
  replaced(
    "a wall beyond the outline",
    ["rooms/c2.yaml", "wall: 3", "wall: 5"],
    "no-such-wall rooms/c2.yaml:19:35",
  ),
  replaced(
    "a door in a wall that is not there",
    ["rooms/c1.yaml", "door: d-living, wall: 2", "door: d-living, wall: 7"],
    "no-such-wall rooms/c1.yaml:16:29",
  ),
  replaced(
    "a trade's wall that is not there",
    ["rooms/c1.yaml", "{ finish: stays }", "{ finish: stays, along: 8 }"],
    "no-such-wall rooms/c1.yaml:18:35",
  ),
  varied(
    "a variation of a room that is none",
    ["rooms:", "  - { room: C7, omit: [joinery] }"],
    "unknown-reference tiny/variations.yaml:7:17",
  ),
  varied(
    "a variation that leaves out a trade that is none",
    ["rooms:", "  - { room: C2, omit: [joinry] }"],
    "unknown-reference tiny/variations.yaml:7:28",
  ),
  varied(
    "a wall beyond the outline of the room that a variation names",
    ["rooms:", "  - room: C2", "    work:", "      floors: { finish: stays, along: 9 }"],
    "no-such-wall tiny/variations.yaml:9:43",
  ),
  varied(
    "a misspelt key in the work that a variation puts in place",
    ["rooms:", "  - room: C2", "    work:", "      floors: { finnish: stays }"],
    "unknown-key tiny/variations.yaml:9:21",
  ),
  replaced(
    "a payment for a trade that is none",
    [
      "money.yaml",
      "overheadAndProfit: 15",
      "overheadAndProfit: 15\npayments: { within: 7, stages: [{ what: x, percent: 100, done: { trade: plastring } }] }",
    ],
    "unknown-reference money.yaml:4:73",
  ),
  replaced(
    "a diagonal to no corner",
    ["rooms/c2.yaml", "to: 3", "to: 6"],
    "no-such-wall rooms/c2.yaml:13:20",
  ),
  replaced(
    "joists along a wall that is not there",
    ["house.yaml", "base: timber", "base: timber\n    joists: { alongWallOf: C2, wall: 5 }"],
    "no-such-wall house.yaml:8:38",
  ),
  replaced(
    "joists along a room that is none",
    ["house.yaml", "base: timber", "base: timber\n    joists: { alongWallOf: C4, wall: 1 }"],
    "unknown-reference house.yaml:8:28",
  ),
  replaced(
    "a product that is none",
    ["rooms/c2.yaml", "board: oak-14", "board: oak-41"],
    "unknown-reference rooms/c2.yaml:21:44",
  ),
  replaced(
    "a doorway's leaf that is none",
    ["house.yaml", "leaf: leaf-762", "leaf: leaf-726"],
    "unknown-reference house.yaml:30:30",
  ),
  replaced(
    "a product of another kind",
    ["products.yaml", "board: oak-14", "board: skirting-145"],
    "wrong-kind products.yaml:2:10",
  ),
  replaced(
    "stock in hand of no product",
    ["products.yaml", "products:", "inHand: [{ product: oak-15, amount: 3 }]\nproducts:"],
    "unknown-reference products.yaml:4:21",
  ),
  replaced(
    "a crew's trade that is none",
    ["programme.yaml", "[floors, joinery]", "[floors, plastering]"],
    "unknown-reference programme.yaml:10:63",
  ),
  replaced(
    "a rate for no crew",
    ["money.yaml", "crew: joiners", "crew: painters"],
    "unknown-reference money.yaml:2:13",
  ),
  replaced(
    "quiet for no room",
    ["programme.yaml", "rooms: [C2]", "rooms: [C7]"],
    "unknown-reference programme.yaml:12:80",
  ),
  replaced(
    "a stair between storeys that are none",
    [
      "house.yaml",
      "doors:",
      "stairs:\n  - { id: s1, name: stair, from: ground, to: attic, fromRoom: C1, toRoom: C2, risers: 13, rise: 205, going: 220, width: 860, new: true }\ndoors:",
    ],
    "unknown-reference house.yaml:9:46",
  ),
  changed(
    "a room's file not named for it",
    [{ copy: "tiny/rooms/c2.yaml", to: "tiny/rooms/living.yaml" }, { remove: "tiny/rooms/c2.yaml" }],
    "file-name-differs tiny/rooms/living.yaml:1:5",
  ),
]

/** Doorways and windows that cannot be where they are placed. */
export const openingCases: BrokenCase[] = [
  replaced(
    "a door wider than its wall",
    [
      "rooms/c1.yaml",
      "  - { length: 4120, turn: right }\n  - { length: 1140, turn: right }",
      "  - { length: 660, turn: right }\n  - { length: 1140, turn: right }",
    ],
    "door-wider-than-wall rooms/c1.yaml:16:29",
  ),
  replaced(
    "a door past the end of its wall",
    ["rooms/c1.yaml", "fromLeft: 150", "fromLeft: 350"],
    "door-beyond-wall rooms/c1.yaml:15:41",
  ),
  replaced(
    "a window wider than its wall",
    ["rooms/c2.yaml", "width: 1800", "width: 4800"],
    "window-wider-than-wall rooms/c2.yaml:19:35",
  ),
  replaced(
    "a window past the end of its wall",
    ["rooms/c2.yaml", "fromLeft: 1200", "fromLeft: 2700"],
    "window-beyond-wall rooms/c2.yaml:19:48",
  ),
  replaced(
    "a window in a door",
    ["rooms/c2.yaml", "wall: 3, fromLeft: 1200", "wall: 1, fromLeft: 2600"],
    "openings-overlap rooms/c2.yaml:19:48",
  ),
  replaced(
    "an entry in another wall",
    ["rooms/c1.yaml", "entry: d-front", "entry: d-living"],
    "entry-not-in-wall-1 rooms/c1.yaml:6:8",
  ),
  replaced(
    "an entry that is not in the room",
    ["rooms/c2.yaml", "entry: d-living", "entry: d-front"],
    "unknown-reference rooms/c2.yaml:6:8",
  ),
  replaced(
    "a door in an open edge",
    [
      "rooms/c2.yaml",
      "outline:\n  - { length: 4450, turn: right }",
      "outline:\n  - { length: 4450, turn: right, is: open-edge }",
    ],
    "door-in-no-wall rooms/c2.yaml:17:29",
  ),
]

/** Ids that two have. */
export const duplicateCases: BrokenCase[] = [
  changed(
    "two variations of one id",
    [
      {
        file: "tiny/variations.yaml",
        text: "variations:\n  - { id: V1, on: 2027-02-01, asked: client, what: a }\n  - { id: v1, on: 2027-02-01, asked: client, what: b }\n",
      },
    ],
    "duplicate-id tiny/variations.yaml:3:11",
  ),
  changed(
    "a room twice",
    [{ copy: "tiny/rooms/c2.yaml", to: "tiny/rooms/c3.yaml" }],
    "file-name-differs tiny/rooms/c3.yaml:1:5",
    "duplicate-id tiny/rooms/c3.yaml:1:5",
  ),
  replaced(
    "a room named as the open air",
    ["rooms/c2.yaml", "id: C2", "id: outside"],
    "unknown-reference house.yaml:21:19",
    "unknown-reference house.yaml:22:17",
    "file-name-differs rooms/c2.yaml:1:5",
    "reserved-id rooms/c2.yaml:1:5",
    "unknown-reference programme.yaml:12:80",
  ),
  replaced(
    "a doorway twice",
    ["house.yaml", "id: d-living", "id: d-front"],
    "duplicate-id house.yaml:19:9",
    "unknown-reference rooms/c1.yaml:16:13",
    "unknown-reference rooms/c2.yaml:17:13",
  ),
  replaced(
    "a product twice",
    ["products.yaml", "id: leaf-762", "id: oak-14"],
    "unknown-reference house.yaml:30:30",
    "duplicate-id products.yaml:5:9",
  ),
  replaced(
    "a storey twice",
    ["house.yaml", "doors:", "  - { id: Ground, name: again, deck: 0, finishNow: 0, base: timber }\ndoors:"],
    "duplicate-id house.yaml:8:11",
  ),
  replaced(
    "a doorway placed twice in a room",
    [
      "rooms/c1.yaml",
      "door: d-living, wall: 2, fromLeft: 1200 }",
      "door: d-living, wall: 2, fromLeft: 1200 }\n  - { door: d-living, wall: 4, fromLeft: 1200 }",
    ],
    "duplicate-id rooms/c1.yaml:17:13",
  ),
]

/** Days and times that end before they begin. */
export const spanCases: BrokenCase[] = [
  replaced(
    "a closure that ends before it begins",
    ["programme.yaml", "to: 2027-03-29", "to: 2027-03-19"],
    "span-reversed programme.yaml:8:29",
  ),
  replaced(
    "a working span that ends before it begins",
    ["programme.yaml", '"16:30"', '"06:30"'],
    "span-reversed programme.yaml:5:26",
  ),
  replaced(
    "working spans that overlap",
    ["programme.yaml", '"12:30"', '"11:30"'],
    "spans-overlap programme.yaml:5:13",
  ),
]

/** Doorways and rooms that contradict each other. */
export const doorwayCases: BrokenCase[] = [
  replaced(
    "a door that its room does not place",
    ["rooms/c1.yaml", "\n  - { door: d-living, wall: 2, fromLeft: 1200 }", ""],
    "door-not-placed house.yaml:21:15",
  ),
  replaced(
    "a door placed in another room",
    ["house.yaml", "between: [C1, C2]", "between: [cupboard, C2]"],
    "door-of-other-rooms rooms/c1.yaml:16:13",
  ),
  replaced(
    "a door from a room to itself",
    ["house.yaml", "between: [C1, C2]", "between: [C2, C2]"],
    "door-to-itself house.yaml:21:19",
    "door-of-other-rooms rooms/c1.yaml:16:13",
  ),
  replaced(
    "a leaf that swings elsewhere",
    ["house.yaml", "swingsInto: C2", "swingsInto: garage"],
    "swings-elsewhere house.yaml:22:17",
  ),
]

/** Odd but sound: nothing is found, and the text is kept as it is. */
export const soundCases: BrokenCase[] = [
  replaced("HTML in a name", [
    "rooms/c1.yaml",
    "name: hall",
    "name: <b onclick=alert(1)>hall</b> & {{ 1 + 1 }}",
  ]),
  replaced("text that would be a number", ["job.yaml", "the owners", "!!str 010"]),
  replaced("text in many scripts", [
    "job.yaml",
    "the owners",
    "die Eigentümer, les propriétaires, собственники 屋主",
  ]),
  changed("lines that end as on another system", [
    {
      file: "tiny/money.yaml",
      text: "rates: []\r\noverheadAndProfit: 15\r\ncontingency: 5\r\nvat: { percent: 20, because: ordinary work }\r\n",
    },
  ]),
  changed("a byte order mark before UTF-8", [
    {
      file: "tiny/money.yaml",
      text: "\ufeffrates: []\noverheadAndProfit: 15\ncontingency: 5\nvat: { percent: 20, because: ordinary work }\n",
    },
  ]),
  changed("no money", [{ remove: "tiny/money.yaml" }]),
  changed("other files beside", [
    { file: "tiny/photos/1.txt", text: "" },
    { file: "README.md", text: "" },
    { file: ".schema/x/job.yaml", text: "" },
  ]),
]
