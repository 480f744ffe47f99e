import { type BrokenCase, changed, replaced } from "./case.ts"

const c2 = "tiny/rooms/c2.yaml"
const bomb = [
  "a: &a [x, x, x, x, x, x, x, x, x]",
  ..."bcdefghi".split("").map((letter, index) => {
    const before = "abcdefgh"[index]
    return `${letter}: &${letter} [${Array.from({ length: 9 }, () => `*${before}`).join(", ")}]`
  }),
].join("\n")

/** Text that is no YAML, or YAML that no job file needs. */
export const yamlCases: BrokenCase[] = [
  replaced(
    "a bracket left open",
    ["house.yaml", "[770, 768, 770]", "[770, 768, 770"],
    "yaml-syntax house.yaml:28:5",
  ),
  replaced("a quote left open", ["job.yaml", "the owners", '"the owners'], "yaml-syntax job.yaml:13:1"),
  replaced("a tab as indent", ["job.yaml", "  humidity: 55", "\thumidity: 55"], "yaml-syntax job.yaml:11:1"),
  replaced(
    "a colon in a line of text",
    ["job.yaml", "the owners", "owners: two"],
    "yaml-syntax job.yaml:4:9",
  ),
  replaced(
    "an indent that fits nothing",
    ["rooms/c1.yaml", "storey:", "   storey:"],
    "yaml-syntax rooms/c1.yaml:2:7",
  ),
  replaced(
    "a key twice",
    ["rooms/c1.yaml", "use: hall", "use: hall\nname: passage"],
    "duplicate-key rooms/c1.yaml:5:1",
  ),
  changed("an alias bomb", [{ file: c2, text: `${bomb}\n` }], `alias-refused ${c2}:1:7`),
  replaced(
    "an anchor and its alias",
    ["products.yaml", "board: oak-14", "board: &oak oak-14\n  other: *oak"],
    "alias-refused products.yaml:2:15",
  ),
  replaced(
    "a merge key",
    ["job.yaml", "  humidity: 55", "  <<: { humidity: 55 }"],
    "alias-refused job.yaml:11:3",
  ),
  replaced("a tag of one's own", ["job.yaml", "the owners", "!secret owners"], "tag-refused job.yaml:4:17"),
  replaced("a binary tag", ["job.yaml", "the owners", "!!binary b3duZXJz"], "tag-refused job.yaml:4:18"),
  changed(
    "a script's tag",
    [{ file: c2, text: 'id: !!js/function "function () { return 1 }"\n' }],
    `tag-refused ${c2}:1:19`,
  ),
  replaced("two documents", ["rooms/c2.yaml", "notes:", "---\nnotes:"], "many-documents rooms/c2.yaml:23:1"),
  replaced(
    "a directive",
    ["job.yaml", "ref: tiny", "%YAML 1.1\n---\nref: tiny"],
    "directive-refused job.yaml:1:1",
  ),
  changed(
    "brackets ten thousand deep",
    [{ file: c2, text: `id: C2\nnotes: ${"[".repeat(10_000)}\n` }],
    `too-deep ${c2}:2:208`,
  ),
  changed(
    "dashes twenty thousand deep",
    [{ file: c2, text: `${"- ".repeat(20_000)}a\n` }],
    `too-deep ${c2}:1:1`,
  ),
  replaced(
    "a list as a key",
    ["job.yaml", "title: One", "? [a, b]\n: 1\ntitle: One"],
    "key-not-text job.yaml:3:3",
  ),
  replaced(
    "a key that JavaScript keeps",
    ["job.yaml", "client:", "__proto__: { code: x }\nclient:"],
    "unknown-key job.yaml:4:1",
  ),
  replaced(
    "a key of all objects",
    ["job.yaml", "client:", "constructor: x\nclient:"],
    "unknown-key job.yaml:4:1",
  ),
  replaced(
    "a control character by escape",
    ["job.yaml", "the owners", '"the \\u0007owners"'],
    "control-character job.yaml:4:9",
  ),
  replaced(
    "a mark that turns text round",
    ["job.yaml", "the owners", "the \u202eowners"],
    "control-character job.yaml:4:9",
  ),
  replaced(
    "half a character by escape",
    ["job.yaml", "the owners", '"the \\ud800owners"'],
    "control-character job.yaml:4:9",
  ),
  changed(
    "a list for a file",
    [{ file: "tiny/money.yaml", text: "- rates\n" }],
    "wrong-type tiny/money.yaml:1:1",
  ),
  changed(
    "a word for a file",
    [{ file: "tiny/money.yaml", text: "later\n" }],
    "wrong-type tiny/money.yaml:1:1",
  ),
]
