import { describe } from "vitest"
import { openingCases } from "../../broken/cases/across.ts"
import { itFindsExactly } from "../broken-cases.ts"

describe("openings that cannot be where they are placed", () => {
  itFindsExactly(openingCases)
})
