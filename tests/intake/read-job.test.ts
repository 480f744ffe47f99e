import { describe } from "vitest"
import { valueCases } from "../broken/cases/values.ts"
import { itFindsExactly } from "./broken-cases.ts"

describe("keys and values the format does not have", () => {
  itFindsExactly(valueCases)
})
