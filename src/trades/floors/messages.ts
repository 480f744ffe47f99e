import type { At, Finding, Severity } from "../../kernels/finding.ts"
import { fixed, mmText } from "../../kernels/units.ts"

/** A wall number that the room has not. */
export function noSuchWall(at: At, wall: number, walls: number): Finding {
  return {
    code: "floor-no-such-wall",
    severity: "error",
    at,
    message: `The room has no wall ${wall}.`,
    expected: `1 to ${walls}`,
  }
}

/** A hole or cupboard that the room has not. */
export function noSuchHole(at: At, id: string, holes: readonly string[]): Finding {
  return {
    code: "floor-no-such-hole",
    severity: "error",
    at,
    message: `The room has no hole or cupboard "${id}".`,
    expected: holes.length > 0 ? holes.join(", ") : "the room has none",
  }
}

/** First row's wall that does not run the way of the boards. */
export function firstRowNotAlong(at: At, first: number, along: number): Finding {
  return {
    code: "floor-first-row-not-along",
    severity: "error",
    at,
    message: `Boards run along wall ${along}, but wall ${first} for the first row runs another way.`,
    mend: "Name a wall that runs the same way as the boards, or leave one of the two out.",
  }
}

/** A product that is missing for a floor. */
export function noProduct(at: At, what: string, use: string): Finding {
  return {
    code: "floor-no-product",
    severity: "error",
    at,
    message: `No ${what} is named here or chosen for the job.`,
    mend: `Name it here, or under "chosen: ${use}" in products.yaml.`,
  }
}

/** A floor held along more than one line. */
export function heldTwice(at: At, walls: readonly number[]): Finding {
  return {
    code: "floor-held-twice",
    severity: "error",
    at,
    message: `The floor is held along walls ${walls.join(" and ")}: it cannot grow or shrink between them.`,
    expected: "a floating floor held along one line at most",
    mend: 'Free all but one: a loose profile over a gap in place of a glued nosing; or write a break between them under "breaks:".',
  }
}

/** A floor, or a field of it, that is longer or wider than it may be without a break. @param cure breaks that would part it so far */
export function runTooLong(
  at: At,
  run: { way: "along" | "across"; is: number; most: number },
  cure: readonly { wall: number; fromLeft: number }[],
): Finding {
  const written = cure.map(({ wall, fromLeft }) => `{ wall: ${wall}, fromLeft: ${fromLeft} }`).join(", ")
  const how =
    cure.length > 0
      ? `Write "breaks: [${written}]" here, or move them to where they show least, best to a line through a doorway`
      : "Write breaks: here, each with its wall and fromLeft"
  return warning(at, "floor-run-too-long", {
    message: `The floor is ${mmText(run.is)} mm ${run.way} the boards; without a movement break at most ${mmText(run.most)} mm.`,
    mend: `${how}; rows, profile and order follow. Or ask the maker in writing for a longer run.`,
  })
}

/** A break that meets no wall, or no floor. */
export function breakOffWall(at: At, fromLeft: number, wall: { number: number; length: number }): Finding {
  return {
    code: "floor-break-off-wall",
    severity: "error",
    at,
    message: `A break lies ${mmText(fromLeft)} mm along wall ${wall.number}, which is ${mmText(wall.length)} mm long.`,
    expected: `more than 0 and less than ${mmText(wall.length)}`,
  }
}

/** A break that leaves the floor in one piece. */
export function breakPartsNothing(at: At): Finding {
  return warning(at, "floor-break-parts-nothing", {
    message: "This break does not part the floor: it still hangs together beside the line.",
    mend: "Move the line to where it runs from wall to wall, or write a second break that meets the rest.",
  })
}

/** No profile chosen for a break. */
export function noBreakProfile(at: At): Finding {
  return warning(at, "floor-no-break-profile", {
    message: "The floor has a movement break, but no profile is chosen to cover it.",
    mend: 'Choose one under "chosen: floor-break-profile" in products.yaml, so that it is ordered and cut.',
  })
}

/** A profile too narrow for its break. */
export function breakNotCovered(at: At, is: number, asked: number): Finding {
  return warning(at, "floor-break-not-covered", {
    message: `The profile over the break is ${mmText(is)} mm wide; with the gap at its widest on both sides it takes ${mmText(asked)} mm.`,
    mend: `Choose a profile at least ${mmText(asked)} mm wide.`,
  })
}

/** A row that comes out too thin whatever the setting. */
export function rowTooThin(at: At, is: number, least: number): Finding {
  return warning(at, "floor-row-too-thin", {
    message: `A row comes out ${mmText(is)} mm wide; the least is ${mmText(least)} mm.`,
    mend: "Glue it to its neighbour before laying, start from another wall, or take a board of another width.",
  })
}

/** Ends or joints closer than the rules allow, unavoidable in this room. */
export function jointsTooClose(at: At, stagger: number | null, least: number): Finding {
  return warning(at, "floor-joints-too-close", {
    message: `Not every end joint can be kept ${mmText(least)} mm from the next row's${stagger === null ? "" : `; the closest are ${mmText(stagger)} mm apart`}, or a piece at a wall is too short.`,
    mend: "Run the boards the other way, take a board of another length, or ask the maker for the least it allows.",
  })
}

/** A gap smaller than rule and calculation ask. */
export function gapTooSmall(at: At, is: number, asked: number): Finding {
  return warning(at, "floor-gap-too-small", {
    message: `A gap of ${mmText(is)} mm is written; rule and calculation ask ${mmText(asked)} mm.`,
    mend: `Write ${mmText(asked)}, or leave the gap out.`,
  })
}

/** A skirting that does not cover the gap through the whole movement. */
export function gapNotCovered(at: At, skirting: number, asked: number): Finding {
  return warning(at, "floor-gap-not-covered", {
    message: `A skirting ${mmText(skirting)} mm thick does not cover the gap at its widest; it takes ${mmText(asked)} mm.`,
    mend: `Take a skirting or a skirting with a bead at least ${mmText(asked)} mm thick, or undercut the plaster.`,
  })
}

/** A reading outside its limits. */
export function readingOut(at: At, reading: { what: string; value: string; limit: string }): Finding {
  return warning(at, "floor-reading-out", {
    message: `${reading.what}: ${reading.value}; the limit is ${reading.limit}.`,
    mend: "Heat, ventilate and wait; read again. Do not bring in or lay boards before it is within limits.",
  })
}

/** No reading yet of what must be read before laying. */
export function notRead(at: At, what: string): Finding {
  return {
    code: "floor-not-read",
    severity: "note",
    at,
    message: `No reading yet: ${what}.`,
    mend: "Read it on site, write it on the sheet, and enter it in the room's file.",
  }
}

/** A foil-faced underlay over a timber floor that must breathe. */
export function foilOverVentilated(at: At): Finding {
  return warning(at, "floor-foil-over-ventilated", {
    message: "Foil-faced underlay over a ventilated timber floor can trap damp in the deck.",
    mend: "Check that air bricks are clear and the deck is dry, and ask the makers of board and underlay; else take an underlay that breathes.",
  })
}

/** A pack or board that is more than may be carried up. */
export function tooMuchToCarry(at: At, what: string, most: string): Finding {
  return warning(at, "floor-too-much-to-carry", {
    message: `${what}; at most ${most} goes up.`,
    mend: "Open the packs below and carry boards, or carry by two.",
  })
}

/** Screws counted without a measured deck. */
export function deckNotMeasured(at: At): Finding {
  return {
    code: "floor-deck-not-measured",
    severity: "note",
    at,
    message: "The deck to be screwed down has not been measured; screws are counted by rule.",
    mend: "Write deck: thickness and boardWidth, and the joists' centres in house.yaml.",
  }
}

/** No floor left once the gap is taken off. */
export function nothingToLay(at: At, gap: number): Finding {
  return {
    code: "floor-nothing-to-lay",
    severity: "error",
    at,
    message: `No floor is left inside a gap of ${fixed(gap, 0)} mm.`,
  }
}

function warning(at: At, code: string, words: Pick<Finding, "message" | "expected" | "mend">): Finding {
  const severity: Severity = "warning"
  return { code, severity, at, ...words }
}
