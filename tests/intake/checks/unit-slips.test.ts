import { describe } from "vitest"
import { unitCases } from "../../broken/cases/values.ts"
import { itFindsExactly } from "../broken-cases.ts"

describe("figures in metres or centimetres", () => {
  itFindsExactly(unitCases)
})
