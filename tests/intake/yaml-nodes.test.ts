import { describe } from "vitest"
import { yamlCases } from "../broken/cases/yaml.ts"
import { itFindsExactly } from "./broken-cases.ts"

describe("text that is no YAML, or YAML that no job needs", () => {
  itFindsExactly(yamlCases)
})
