import { fixed, mmText } from "../../../kernels/units.ts"
import type { Rules } from "../../../rulebook/rules.ts"
import { pitchOf, twiceRiseAndGoing, unevenness } from "./rises.ts"
import type { StairSeen } from "./stair.ts"

/** One figure of a stair against what guidance says. */
export interface Limit {
  code: string
  what: string
  /** For the reader, with its unit. */
  here: string
  says: string
  within: boolean
  /** Id of the rulebook entry, or entries, that it rests on. */
  rests: string[]
}

/** A stair's finished rises, going, pitch and their sum against guidance for a private stair, in the order of the sheet. */
export function limitsOf({ stair, rises, work }: StairSeen, rules: Rules): Limit[] {
  const value = (id: string) => rules.value(`joinery-stair-${id}`)
  const highest = Math.max(...rises.map((rise) => rise.after))
  const usual = rises[Math.floor(rises.length / 2)]!.after
  const pitch = pitchOf(usual, stair.going)
  const sum = twiceRiseAndGoing(usual, stair.going)
  const uneven = unevenness(rises)
  const least = (code: string, what: string, figure: number | undefined): Limit[] =>
    figure === undefined
      ? []
      : [
          {
            code,
            what,
            here: `${mmText(figure)} mm`,
            says: `at least ${mmText(value(`${code}-least`))} mm`,
            within: figure >= value(`${code}-least`),
            rests: [`joinery-stair-${code}-least`],
          },
        ]
  return [
    {
      code: "rise",
      what: "Highest finished rise",
      here: `${fixed(highest, 1)} mm`,
      says: `at most ${mmText(value("rise-most"))} mm`,
      within: highest <= value("rise-most"),
      rests: ["joinery-stair-rise-most"],
    },
    {
      code: "unequal",
      what: "Difference between finished rises",
      here: `${fixed(uneven, 1)} mm`,
      says: `all the same; ask beyond ${mmText(value("unequal"))} mm`,
      within: uneven <= value("unequal"),
      rests: ["joinery-stair-unequal"],
    },
    ...least("going", "Going", stair.going),
    {
      code: "pitch",
      what: "Pitch",
      here: `${fixed(pitch, 1)}°`,
      says: `at most ${value("pitch-most")}°`,
      within: pitch <= value("pitch-most"),
      rests: ["joinery-stair-pitch-most"],
    },
    {
      code: "sum",
      what: "Twice the rise and the going",
      here: `${fixed(sum, 1)} mm`,
      says: `${mmText(value("sum-least"))} to ${mmText(value("sum-most"))} mm`,
      within: sum >= value("sum-least") && sum <= value("sum-most"),
      rests: ["joinery-stair-sum-least", "joinery-stair-sum-most"],
    },
    ...least("handrail", "Handrail over the pitch line", work?.handrailHeight),
    ...least("guarding", "Guarding", work?.guardingHeight),
  ]
}
