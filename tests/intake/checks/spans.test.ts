import { describe } from "vitest"
import { spanCases } from "../../broken/cases/across.ts"
import { itFindsExactly } from "../broken-cases.ts"

describe("days and times that end before they begin", () => {
  itFindsExactly(spanCases)
})
