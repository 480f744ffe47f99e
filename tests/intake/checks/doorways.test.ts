import { describe } from "vitest"
import { doorwayCases } from "../../broken/cases/across.ts"
import { itFindsExactly } from "../broken-cases.ts"

describe("doorways and rooms that contradict each other", () => {
  itFindsExactly(doorwayCases)
})
