import { describe, expect, it } from "vitest"
import { answerText } from "../../../src/press/site/timer-page.ts"

/** The page itself is tested in a browser, in hosted.test.ts. */
describe("the timer's answer in words", () => {
  const answer = {
    hours: 24,
    at: { date: "2027-03-28", time: "17:00" },
    text: "Sun 28 Mar 17:00",
    next: "next coat",
  }

  it("names the next step, its earliest moment, the hours, and what ends the wait", () => {
    expect(answerText({ ...answer, until: "dry to the touch" })).toBe(
      "next coat: not before Sun 28 Mar 17:00, 24 h. The hours alone do not end the wait: dry to the touch.",
    )
  })

  it("counts long waits in days too, never fewer", () => {
    expect(answerText({ ...answer, hours: 169, until: "pale" })).toContain("169 h (7.5 days)")
  })

  it("says do not first", () => {
    expect(answerText({ doNot: "colder than 5 °C" })).toMatch(/^Do not: colder than 5 °C\./)
  })
})
