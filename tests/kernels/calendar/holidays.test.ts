import { describe, expect, it } from "vitest"
import { weekday } from "../../../src/kernels/calendar/dates.ts"
import {
  ENGLAND_AND_WALES,
  easterSunday,
  holidayDates,
  holidaysOf,
} from "../../../src/kernels/calendar/holidays.ts"
import { BANK_HOLIDAYS, EASTERS, WRONG_EASTER_2027 } from "../../facts/calendar.ts"

describe("public holidays", () => {
  it.each(EASTERS)("Easter Sunday $year is $date ($source)", ({ year, date }) => {
    expect(easterSunday(year)).toBe(date)
  })

  it("Easter is a Sunday from 22 March to 25 April in every year", () => {
    for (let year = 1900; year <= 2199; year++) {
      const easter = easterSunday(year)
      expect(weekday(easter)).toBe("sunday")
      expect(easter >= `${year}-03-22` && easter <= `${year}-04-25`).toBe(true)
    }
  })

  it.each(BANK_HOLIDAYS)("England and Wales $year ($source)", ({ year, dates }) => {
    const kept = holidaysOf(year, ENGLAND_AND_WALES)
    expect(kept.map(({ date }) => `${date} ${weekday(date)}`)).toEqual(dates)
  })

  it("does not fall for the wrong Easter of 2027", () => {
    const dates = holidayDates(2027, 2027, ENGLAND_AND_WALES)
    for (const wrong of WRONG_EASTER_2027) expect(dates.has(wrong)).toBe(false)
  })

  it("Christmas on a Sunday is kept on the Tuesday, Boxing Day staying on its Monday (2022; common practice)", () => {
    const kept = holidaysOf(2022, ENGLAND_AND_WALES).slice(-2)
    expect(kept).toEqual([
      { date: "2022-12-26", name: "Boxing Day" },
      { date: "2022-12-27", name: "Christmas Day", inPlaceOf: "2022-12-25" },
    ])
  })

  it("every year has eight, none at a weekend, none twice", () => {
    for (let year = 2020; year <= 2060; year++) {
      const dates = holidaysOf(year, ENGLAND_AND_WALES).map(({ date }) => date)
      expect(new Set(dates).size).toBe(8)
      expect(dates.some((date) => ["saturday", "sunday"].includes(weekday(date)))).toBe(false)
    }
    expect(holidayDates(2026, 2028, ENGLAND_AND_WALES).size).toBe(24)
  })
})
