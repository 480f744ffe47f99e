import { describe, expect, it } from "vitest"
import { listAt, textAt } from "../../src/intake/draft.ts"
import { yamlFromText } from "../../src/intake/yaml-file.ts"

describe("what stands in a file that may be unsound", () => {
  const yaml = yamlFromText("f.yaml", "list: [{ id: a }, { id: 3 }]\ntext: word\n")
  it("is a list or none, text or none", () => {
    expect(listAt(yaml, ["list"]).map((each) => textAt(each, "id"))).toEqual(["a", undefined])
    expect(listAt(yaml, ["text"])).toEqual([])
    expect(listAt(null, ["list"])).toEqual([])
    expect(textAt(yaml.value, "none", "deeper")).toBeUndefined()
  })
})
