import { describe, expect, it } from "vitest"
import { bookedFindings } from "../../src/orders/booked.ts"

const oak = {
  product: { id: "oak", name: "Oak board" },
  earliest: "2027-03-29",
  latest: "2027-04-01",
  notBefore: "heating on and steady",
}
const lines = [oak, { ...oak, product: { id: "paint", name: "Paint" }, notBefore: null }] as never
const found = (product: string, on: string) =>
  bookedFindings([{ product, on }], lines).map(({ code, severity, at }) => [
    code,
    severity,
    at.path.join("/"),
  ])

describe("deliveries that are booked", () => {
  it("oak before the heating is on and steady is an error with its place; on the days between it is none", () => {
    expect(found("oak", "2027-03-26")).toEqual([["delivery-too-early", "error", "booked/0/on"]])
    expect(found("oak", "2027-03-29")).toEqual([])
    expect(found("oak", "2027-04-01")).toEqual([])
    expect(bookedFindings([{ product: "oak", on: "2027-03-26" }], lines)[0]!.message).toContain("heating on")
  })

  it("too late is a warning, too early without harm too; what nothing asks for is a note", () => {
    expect(found("oak", "2027-04-02")).toEqual([["delivery-too-late", "warning", "booked/0/on"]])
    expect(found("paint", "2027-03-01")).toEqual([["delivery-too-early", "warning", "booked/0/on"]])
    expect(found("slate", "2027-03-01")).toEqual([["booked-for-nothing", "note", "booked/0/on"]])
  })
})
