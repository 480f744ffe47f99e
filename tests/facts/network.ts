/**
 * Activity-on-node networks of textbooks with all their dates and floats:
 * id, duration, what it waits for, earliest start and finish, latest start and finish, total float, free float, three-point guess.
 */
type NodeRow = [
  string,
  number,
  string[],
  number,
  number,
  number,
  number,
  number,
  number,
  [number, number, number],
]

/** A plant building, weeks. */
export const PLANT_BUILDING = {
  source:
    "prototype example of a widely used introduction to operations research; durations and deadlines read in an exercise page, predecessors and guesses from memory; recomputed by hand",
  duration: 44,
  critical: ["A", "B", "C", "E", "F", "J", "L", "N"],
  variance: 9,
  chances: [
    { within: 47, chance: 0.8413 },
    { within: 40, chance: 0.0912 },
  ],
  rows: [
    ["A", 2, [], 0, 2, 0, 2, 0, 0, [1, 2, 3]],
    ["B", 4, ["A"], 2, 6, 2, 6, 0, 0, [2, 3.5, 8]],
    ["C", 10, ["B"], 6, 16, 6, 16, 0, 0, [6, 9, 18]],
    ["D", 6, ["C"], 16, 22, 20, 26, 4, 0, [4, 5.5, 10]],
    ["E", 4, ["C"], 16, 20, 16, 20, 0, 0, [1, 4.5, 5]],
    ["F", 5, ["E"], 20, 25, 20, 25, 0, 0, [4, 4, 10]],
    ["G", 7, ["D"], 22, 29, 26, 33, 4, 0, [5, 6.5, 11]],
    ["H", 9, ["E", "G"], 29, 38, 33, 42, 4, 0, [5, 8, 17]],
    ["I", 7, ["C"], 16, 23, 18, 25, 2, 2, [3, 7.5, 9]],
    ["J", 8, ["F", "I"], 25, 33, 25, 33, 0, 0, [3, 9, 9]],
    ["K", 4, ["J"], 33, 37, 34, 38, 1, 1, [4, 4, 4]],
    ["L", 5, ["J"], 33, 38, 33, 38, 0, 0, [1, 5.5, 7]],
    ["M", 2, ["H"], 38, 40, 42, 44, 4, 4, [1, 2, 3]],
    ["N", 6, ["K", "L"], 38, 44, 38, 44, 0, 0, [5, 5.5, 9]],
  ] satisfies NodeRow[],
}

/** Equipment against air pollution, weeks. */
export const CLEANING_EQUIPMENT = {
  source: "operations management textbooks; from memory, recomputed by hand",
  duration: 15,
  critical: ["A", "C", "E", "G", "H"],
  variance: 3.111,
  chances: [{ within: 16, chance: 0.7146 }],
  rows: [
    ["A", 2, [], 0, 2, 0, 2, 0, 0, [1, 2, 3]],
    ["B", 3, [], 0, 3, 1, 4, 1, 0, [2, 3, 4]],
    ["C", 2, ["A"], 2, 4, 2, 4, 0, 0, [1, 2, 3]],
    ["D", 4, ["A", "B"], 3, 7, 4, 8, 1, 1, [2, 4, 6]],
    ["E", 4, ["C"], 4, 8, 4, 8, 0, 0, [1, 4, 7]],
    ["F", 3, ["C"], 4, 7, 10, 13, 6, 6, [1, 2, 9]],
    ["G", 5, ["D", "E"], 8, 13, 8, 13, 0, 0, [3, 4, 11]],
    ["H", 2, ["F", "G"], 13, 15, 13, 15, 0, 0, [1, 2, 3]],
  ] satisfies NodeRow[],
}

/** Activity-on-arrow networks: arrow from event to event, duration, earliest start and finish, latest start and finish, slack. */
type ArrowRow = [string, number, number, number, number, number, number]

/** A network of seven arrows. */
export const ARROWS = {
  source: "solution sheet of a management-science textbook, full printed table",
  duration: 20,
  critical: ["1-3", "3-4", "4-5", "5-6"],
  rows: [
    ["1-2", 7, 0, 7, 2, 9, 2],
    ["1-3", 10, 0, 10, 0, 10, 0],
    ["2-4", 6, 7, 13, 9, 15, 2],
    ["3-4", 5, 10, 15, 10, 15, 0],
    ["3-5", 4, 10, 14, 14, 18, 4],
    ["4-5", 3, 15, 18, 15, 18, 0],
    ["5-6", 2, 18, 20, 18, 20, 0],
  ] satisfies ArrowRow[],
}

/** A network of thirteen arrows, one of them a dummy. */
export const ARROWS_WITH_DUMMY = {
  source: "solution sheet of a management-science textbook, full printed table",
  duration: 38,
  critical: ["1-3", "3-5", "5-7", "7-8", "8-9"],
  rows: [
    ["1-2", 8, 0, 8, 1, 9, 1],
    ["1-3", 10, 0, 10, 0, 10, 0],
    ["1-4", 9, 0, 9, 6, 15, 6],
    ["2-5", 6, 8, 14, 9, 15, 1],
    ["2-6", 4, 8, 12, 16, 20, 8],
    ["3-5", 5, 10, 15, 10, 15, 0],
    ["4-5", 0, 9, 9, 15, 15, 6],
    ["4-7", 7, 9, 16, 20, 27, 11],
    ["5-7", 12, 15, 27, 15, 27, 0],
    ["5-8", 15, 15, 30, 16, 31, 1],
    ["6-9", 18, 12, 30, 20, 38, 8],
    ["7-8", 4, 27, 31, 27, 31, 0],
    ["8-9", 7, 31, 38, 31, 38, 0],
  ] satisfies ArrowRow[],
}

/** Seven tasks guessed at three points, days; expected durations as printed, to two decimals. */
export const SEVEN_TASKS = {
  source: "worked example in an open encyclopaedia's article on the method; from memory, recomputed by hand",
  duration: 19.51,
  critical: ["a", "c", "e", "g"],
  slack: { b: 3.84, d: 4.68, f: 4.68 } as Record<string, number>,
  rows: [
    ["a", [], [2, 4, 6], 4],
    ["b", [], [3, 5, 9], 5.33],
    ["c", ["a"], [4, 5, 7], 5.17],
    ["d", ["a"], [4, 6, 10], 6.33],
    ["e", ["b", "c"], [4, 5, 7], 5.17],
    ["f", ["d"], [3, 4, 8], 4.5],
    ["g", ["e"], [3, 5, 8], 5.17],
  ] satisfies [string, string[], [number, number, number], number][],
}

/** The normal distribution function. */
export const NORMAL = [
  { z: 0, below: 0.5, source: "symmetry" },
  { z: 1, below: 0.8413447460685429, source: "published tables of the normal distribution; from memory" },
  { z: -1.959963984540054, below: 0.025, source: "published tables of the normal distribution; from memory" },
  { z: 3, below: 0.9986501019683699, source: "published tables of the normal distribution; from memory" },
]
