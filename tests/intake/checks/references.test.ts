import { describe } from "vitest"
import { referenceCases } from "../../broken/cases/across.ts"
import { itFindsExactly } from "../broken-cases.ts"

describe("ids and walls that are not there", () => {
  itFindsExactly(referenceCases)
})
