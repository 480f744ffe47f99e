import { describe } from "vitest"
import { duplicateCases } from "../../broken/cases/across.ts"
import { itFindsExactly } from "../broken-cases.ts"

describe("ids that two have", () => {
  itFindsExactly(duplicateCases)
})
