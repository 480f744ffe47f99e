import { describe } from "vitest"
import { fileCases } from "../broken/cases/files.ts"
import { itFindsExactly } from "./broken-cases.ts"

describe("files and folders that are none", () => {
  itFindsExactly(fileCases)
})
