import { type BrokenCase, changed } from "./case.ts"

const bytes = (text: string) => [...new TextEncoder().encode(text)]
const utf16 = (text: string) => [...text].flatMap((letter) => [letter.charCodeAt(0), 0])
const mebibyte = 1_048_576

/** Files and folders that are no such files or folders. */
export const fileCases: BrokenCase[] = [
  changed("empty file", [{ file: "tiny/rooms/c1.yaml", text: "" }], "empty-file tiny/rooms/c1.yaml:1:1"),
  changed(
    "only a comment",
    [{ file: "tiny/programme.yaml", text: "# to be filled in\n\n" }],
    "empty-file tiny/programme.yaml:1:1",
  ),
  changed(
    "only a document mark",
    [{ file: "tiny/programme.yaml", text: "---\n" }],
    "empty-file tiny/programme.yaml:1:1",
  ),
  changed(
    "binary file",
    [{ file: "tiny/money.yaml", bytes: [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 0x0d] }],
    "binary-file tiny/money.yaml:1:1",
  ),
  changed(
    "a nought byte in text",
    [{ file: "tiny/money.yaml", bytes: [...bytes("rates: []\nnote: a"), 0, ...bytes("b\n")] }],
    "binary-file tiny/money.yaml:1:1",
  ),
  changed(
    "UTF-16 with a mark",
    [{ file: "tiny/money.yaml", bytes: [0xff, 0xfe, ...utf16("rates: []\n")] }],
    "wrong-encoding tiny/money.yaml:1:1",
  ),
  changed(
    "UTF-16 without a mark",
    [{ file: "tiny/money.yaml", bytes: utf16("rates: []\n") }],
    "wrong-encoding tiny/money.yaml:1:1",
  ),
  changed(
    "UTF-32",
    [{ file: "tiny/money.yaml", bytes: [0xff, 0xfe, 0, 0, 0x72, 0, 0, 0] }],
    "wrong-encoding tiny/money.yaml:1:1",
  ),
  changed(
    "a single-byte encoding",
    [{ file: "tiny/money.yaml", bytes: [...bytes("rates: []\nnote: caf"), 0xe9, ...bytes(" closed\n")] }],
    "wrong-encoding tiny/money.yaml:2:10",
  ),
  changed(
    "2 MB of text",
    [{ file: "tiny/rooms/c2.yaml", text: `notes:\n  - ${"word ".repeat((2 * mebibyte) / 5)}\n` }],
    "file-too-big tiny/rooms/c2.yaml:1:1",
  ),
  changed(
    "a note of 2,400 letters",
    [
      {
        file: "tiny/rooms/c2.yaml",
        find: "the piano stays where it is",
        replace: "x".repeat(2400),
      },
    ],
    "too-long tiny/rooms/c2.yaml:24:5",
  ),
  changed("job.yaml missing", [{ remove: "tiny/job.yaml" }], "missing-file tiny/job.yaml:1:1"),
  changed(
    "programme.yaml missing",
    [{ remove: "tiny/programme.yaml" }],
    "missing-file tiny/programme.yaml:1:1",
  ),
  changed("no room at all", [{ remove: "tiny/rooms" }], "missing-file tiny/rooms:1:1"),
  changed(
    "a file's name misspelt",
    [{ file: "tiny/mony.yaml", text: "rates: []\n" }],
    "unknown-file tiny/mony.yaml:1:1",
  ),
  changed(
    "a room file of another ending",
    [{ file: "tiny/rooms/c3.yml", text: "id: C3\n" }],
    "unknown-file tiny/rooms/c3.yml:1:1",
  ),
  changed(
    "a folder where a file belongs",
    [{ remove: "tiny/money.yaml" }, { file: "tiny/money.yaml/note.txt", text: "" }],
    "not-a-file tiny/money.yaml:1:1",
  ),
  changed(
    "a link that leads out of the job",
    [
      { file: "tiny/rooms/c2.yaml", linkTo: "../../../outside.yaml" },
      { file: "../outside.yaml", text: "id: C2\n" },
    ],
    "link-leads-out tiny/rooms/c2.yaml:1:1",
  ),
  changed(
    "a link to a file of the system",
    [{ file: "tiny/money.yaml", linkTo: "/etc/hostname" }],
    "link-leads-out tiny/money.yaml:1:1",
  ),
  changed(
    "a rooms folder that leads out",
    [
      { file: "tiny/rooms", linkTo: "../../elsewhere" },
      { file: "../elsewhere/c1.yaml", text: "id: C1\n" },
    ],
    "link-leads-out tiny/rooms:1:1",
  ),
  changed(
    "a job folder that is a link",
    [
      { file: "../elsewhere/job.yaml", text: "ref: other\n" },
      { file: "other", linkTo: "../elsewhere" },
    ],
    "link-leads-out other:1:1",
  ),
  changed("a folder's name that is no ref", [{ copy: "tiny", to: "Tiny Job" }], "bad-ref Tiny Job:1:1"),
  changed("a copied job folder", [{ copy: "tiny", to: "tiny-2" }], "ref-differs tiny-2/job.yaml:1:6"),
  changed(
    "a copied job with its ref mended but the code kept",
    [
      { copy: "tiny", to: "tiny-2" },
      { file: "tiny-2/job.yaml", find: "ref: tiny", replace: "ref: tiny-2" },
    ],
    "duplicate-code tiny-2/job.yaml:2:7",
  ),
  changed(
    "the catalogue broken",
    [{ file: "catalogue.yaml", find: "perPack: 8", replace: "perPack: eight" }],
    "wrong-type catalogue.yaml:10:14",
  ),
  changed(
    "the catalogue has a product twice",
    [{ file: "catalogue.yaml", find: "id: skirting-145", replace: "id: Oak-14" }],
    "duplicate-id catalogue.yaml:13:9",
    "unknown-reference tiny/products.yaml:3:13",
  ),
]
