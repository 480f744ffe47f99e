import { describe, expect, it } from "vitest"

import { Fault } from "../../../src/kernels/fault.ts"
import { pdfDate, xmpDate } from "../../../src/press/pdf/dates.ts"

describe("dates", () => {
  it.each([
    ["2027-02-08T09:00:00Z", "D:20270208090000Z", "2027-02-08T09:00:00Z"],
    ["2027-02-08T22:30:15.900+13:00", "D:20270208093015Z", "2027-02-08T09:30:15Z"],
    ["2027-02-08", "D:20270208000000Z", "2027-02-08T00:00:00Z"],
  ])("%s is the same instant in both forms, in UTC (ISO 32000-1, 7.9.4; ISO 8601)", (instant, pdf, xmp) => {
    expect(pdfDate(instant)).toBe(pdf)
    expect(xmpDate(instant)).toBe(xmp)
  })

  it("is a fault for what is no instant", () => {
    expect(() => pdfDate("next Monday")).toThrow(Fault)
  })
})
