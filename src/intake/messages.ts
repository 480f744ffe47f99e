import type { Finding } from "../kernels/finding.ts"

/** What is said of a place; the place is added by who finds it. */
export type Saying = Omit<Finding, "at">

const kib = 1024

// Files and folders

/** A job folder's name is no reference. */
export const badRef = (name: string): Saying => ({
  code: "bad-ref",
  severity: "error",
  message: `the job folder is named ${quoted(name)}`,
  expected: "small letters, digits and hyphens, beginning with a letter, 2 to 32 characters",
  mend: "rename the folder, and write the same name as `ref` in job.yaml",
})
/** No job of the name asked for. */
export const noSuchJob = (ref: string, near?: string): Saying => ({
  code: "no-such-job",
  severity: "error",
  message: `there is no job ${quoted(ref)}`,
  ...didYouMean(near),
})
/** The folder of all jobs is not there. */
export const noJobs = (dir: string): Saying => ({
  code: "no-jobs",
  severity: "error",
  message: `there is no folder of jobs at ${quoted(dir)}`,
  mend: "name the folder that holds one folder for each job",
})
/** A file that every job must have. */
export const missingFile = (name: string): Saying => ({
  code: "missing-file",
  severity: "error",
  message: `${name} is missing`,
  mend: `write ${name} into the job's folder`,
})
/** A YAML file that no stage reads: most likely a misspelt name. */
export const unknownFile = (name: string, near?: string): Saying => ({
  code: "unknown-file",
  severity: "warning",
  message: `${quoted(name)} is read by nothing`,
  ...didYouMean(near),
})
/** A room's file is not named for the room. */
export const fileNameDiffers = (file: string, id: string): Saying => ({
  code: "file-name-differs",
  severity: "warning",
  message: `the room ${quoted(id)} is written in ${file}`,
  expected: `rooms/${id.toLowerCase()}.yaml`,
})
/** More room files than a job may have. */
export const tooManyFiles = (count: number, most: number): Saying => ({
  code: "too-many-files",
  severity: "error",
  message: `the folder holds ${count} files`,
  expected: `at most ${most}`,
})
/** A job whose files together are larger than any house needs. */
export const jobTooBig = (most: number): Saying => ({
  code: "job-too-big",
  severity: "error",
  message: "the job's files together are too large; this one and those after it are not read",
  expected: `at most ${most} bytes in all`,
})
/** More wrong in one file than anyone would read. */
export const manyFindings = (more: number): Saying => ({
  code: "many-findings",
  severity: "error",
  message: `${more} more of the same kind are left out here`,
  mend: "mend those above first, then check again",
})
/** A link that leads out of the job's folder. */
export const linkLeadsOut = (): Saying => ({
  code: "link-leads-out",
  severity: "error",
  message: "this is a link that leads out of the folder, and is not followed",
  mend: "put the file itself here",
})
/** A folder, pipe or the like in a file's place, or a file that may not be read. */
export const notAFile = (why: string): Saying => ({
  code: "not-a-file",
  severity: "error",
  message: `this cannot be read as a file: ${why}`,
})
/** A file larger than any job needs. */
export const fileTooBig = (bytes: number, most: number): Saying => ({
  code: "file-too-big",
  severity: "error",
  message: `the file has ${Math.ceil(bytes / kib)} KiB and was not read`,
  expected: `at most ${most / kib} KiB`,
  mend: "keep what is measured and chosen here, and long text elsewhere",
})
/** A file with nothing in it but spaces and comments. */
export const emptyFile = (): Saying => ({
  code: "empty-file",
  severity: "error",
  message: "the file is empty",
  mend: "fill it in, or copy it from a new job",
})
/** A file that is no text. */
export const binaryFile = (): Saying => ({
  code: "binary-file",
  severity: "error",
  message: "the file is not text",
  mend: "write it anew as plain text in UTF-8",
})
/** Text in another encoding than UTF-8. */
export const wrongEncoding = (found: string): Saying => ({
  code: "wrong-encoding",
  severity: "error",
  message: `the text is ${found}`,
  expected: "UTF-8",
  mend: "save the file as UTF-8 in the editor",
})
/** A control character, or one that turns the direction of text. */
export const controlCharacter = (character: string): Saying => ({
  code: "control-character",
  severity: "error",
  message: `the text holds the invisible character U+${hex(character)}`,
  mend: "take it out",
})

// YAML

/** Text that is no YAML. */
export const yamlSyntax = (why: string): Saying => ({
  code: "yaml-syntax",
  severity: "error",
  message: `the YAML cannot be read here: ${why}`,
})
/** The same key twice in one mapping. */
export const duplicateKey = (key: string): Saying => ({
  code: "duplicate-key",
  severity: "error",
  message: `${quoted(key)} is written twice in the same place`,
  mend: "keep one of them",
})
/** An anchor, alias or merge key. */
export const aliasRefused = (what: string): Saying => ({
  code: "alias-refused",
  severity: "error",
  message: `${what}: anchors and aliases are not used in job files`,
  mend: "write the value out where it is needed",
})
/** A tag other than those of plain YAML. */
export const tagRefused = (tag: string): Saying => ({
  code: "tag-refused",
  severity: "error",
  message: `the tag ${quoted(tag)} is not used in job files`,
  mend: "write the value alone",
})
/** A `%` directive. */
export const directiveRefused = (): Saying => ({
  code: "directive-refused",
  severity: "error",
  message: "directives (lines beginning with %) are not used in job files",
  mend: "take the line out",
})
/** A second document in one file. */
export const manyDocuments = (): Saying => ({
  code: "many-documents",
  severity: "error",
  message: "a second document begins here",
  expected: "one document a file",
  mend: "take out the line ---, or put the rest into its own file",
})
/** Brackets or indents deeper than any job needs. */
export const tooDeep = (most: number): Saying => ({
  code: "too-deep",
  severity: "error",
  message: "brackets or indents are nested too deeply here",
  expected: `at most ${most} levels`,
})
/** A list or mapping as a key. */
export const keyNotText = (): Saying => ({
  code: "key-not-text",
  severity: "error",
  message: "a list or mapping stands where a key is expected",
})
/** A number in a form that is easily misread. */
export const numberForm = (source: string, read: number): Saying => ({
  code: "number-form",
  severity: "error",
  message: `${quoted(source)} is read as ${read}`,
  expected: "plain digits, with no nought in front, no sign in front, no exponent",
  mend: `write ${read} if that is meant, or "${source}" in quotes if it is text`,
})

// Keys and values

/** A key that the format does not have. */
export const unknownKey = (key: string, near?: string, known: readonly string[] = []): Saying => ({
  code: "unknown-key",
  severity: "error",
  message: `${quoted(key)} is not known here`,
  ...(near ? { expected: quoted(near) } : listed(known)),
  mend: near ? `write ${near}` : "take it out",
})
/** A key that must be there. */
export const missingKey = (key: string, what?: string): Saying => ({
  code: "missing-key",
  severity: "error",
  message: `${quoted(key)} is missing`,
  ...(what ? { expected: bare(what) } : {}),
  mend: `add ${key}`,
})
/** A value of another type than the format asks. */
export const wrongType = (found: string, wanted: string, mend?: string): Saying => ({
  code: "wrong-type",
  severity: "error",
  message: `${found} is written`,
  expected: wanted,
  ...(mend ? { mend } : {}),
})
/** A value that is none of those allowed. */
export const wrongValue = (found: string, wanted: string, near?: string): Saying => ({
  code: "wrong-value",
  severity: "error",
  message: `${found} is written`,
  expected: wanted,
  ...(near ? { mend: `write ${near}` } : {}),
})
/** A length or count that cannot be negative. */
export const negativeSize = (value: number): Saying => ({
  code: "negative-size",
  severity: "error",
  message: `${value} is written`,
  expected: "no negative figure",
})
/** Beyond a limit: a figure, the length of a text or of a list. */
export const outOfRange = (
  code: "too-small" | "too-big" | "too-short" | "too-long" | "too-few" | "too-many",
  found: string,
  limit: string,
): Saying => ({ code, severity: "error", message: `${found} is written`, expected: limit })
/** Text that is not in the form asked for. */
export const badForm = (found: string, wanted: string): Saying => ({
  code: "bad-form",
  severity: "error",
  message: `${found} is written`,
  expected: wanted,
})
/** A check of the format's own, in its own words. */
export const notAllowed = (code: string, found: string, why: string): Saying => ({
  code,
  severity: "error",
  message: `${found} is written: ${why}`,
})
/** A figure in mm that is more likely metres or centimetres. */
export const unitSlip = (value: number, unit: "metres" | "centimetres", meant: number): Saying => ({
  code: "unit-slip",
  severity: "error",
  message: `${value} is written, which looks like ${unit}`,
  expected: "millimetres",
  mend: `write ${meant} if ${value} ${unit} are meant`,
})

// References and ids

/** An id that nothing in the job has. */
export const unknownReference = (what: string, id: string, near?: string): Saying => ({
  code: "unknown-reference",
  severity: "error",
  message: `there is no ${what} ${quoted(id)}`,
  ...didYouMean(near),
})
/** The same id twice. */
export const duplicateId = (what: string, id: string, first: string): Saying => ({
  code: "duplicate-id",
  severity: "error",
  message: `the ${what} ${quoted(id)} is written a second time`,
  expected: `one (the first is at ${first})`,
  mend: "give each its own id; capitals alone make no difference",
})
/** An id that has a meaning of its own. */
export const reservedId = (id: string): Saying => ({
  code: "reserved-id",
  severity: "error",
  message: `${quoted(id)} is a word of the format and no room's id`,
})
/** job.yaml and its folder differ. */
export const refDiffers = (ref: string, folder: string): Saying => ({
  code: "ref-differs",
  severity: "error",
  message: `the ref is ${quoted(ref)} but the folder is named ${quoted(folder)}`,
  expected: quoted(folder),
})
/** Two jobs share the code of their hosted address. */
export const codeTaken = (code: string, other: string): Saying => ({
  code: "duplicate-code",
  severity: "error",
  message: `the code ${quoted(code)} is that of the job ${quoted(other)} already`,
  mend: "give this job a code of its own before anything is printed",
})
/** A wall number beyond the outline. */
export const noSuchWall = (wall: number, count: number): Saying => ({
  code: "no-such-wall",
  severity: "error",
  message: `there is no wall ${wall}`,
  expected: `a wall from 1 to ${count}`,
})
/** A product of another kind than its use asks. */
export const wrongKind = (id: string, found: string, wanted: readonly string[]): Saying => ({
  code: "wrong-kind",
  severity: "error",
  message: `the product ${quoted(id)} is a ${found}`,
  expected: `a product of kind ${wanted.join(" or ")}`,
})

// Doorways and windows

/** The entry is not in the room. */
export const noSuchEntry = (id: string, near?: string): Saying => ({
  code: "unknown-reference",
  severity: "error",
  message: `there is no doorway, hatch or opening ${quoted(id)} in this room`,
  ...didYouMean(near),
})
/** Wall 1 is not the wall of the entry. */
export const entryNotInWall1 = (id: string, wall: number): Saying => ({
  code: "entry-not-in-wall-1",
  severity: "error",
  message: `the entry ${quoted(id)} is in wall ${wall}`,
  expected: "the entry in wall 1",
  mend: "begin the outline with the wall of the entry, or name another entry",
})
/** An opening wider than its wall. */
export const openingWiderThanWall = (of: Opening, length: number): Saying => ({
  code: `${of.sort}-wider-than-wall`,
  severity: "error",
  message: `${of.name} is ${of.width} wide, wall ${of.wall} is ${length} long`,
  expected: "an opening narrower than its wall",
})
/** An opening that runs past the end of its wall. */
export const openingBeyondWall = (of: Opening, length: number): Saying => ({
  code: `${of.sort}-beyond-wall`,
  severity: "error",
  message: `${of.name} ends ${of.fromLeft + of.width} from the left end of wall ${of.wall}, which is ${length} long`,
  expected: `at most ${length - of.width} from the left end`,
})
/** Two openings in the same place. */
export const openingsOverlap = (of: Opening, other: Opening): Saying => ({
  code: "openings-overlap",
  severity: "error",
  message: `${of.name} and ${other.name} overlap in wall ${of.wall}`,
})
/** A door hung in what is no wall. */
export const doorInNoWall = (name: string, is: string): Saying => ({
  code: "door-in-no-wall",
  severity: "error",
  message: `the doorway ${quoted(name)} stands in a run that is a ${is}`,
  expected: "a wall",
})
/** A room does not place a door that joins it. */
export const doorNotPlaced = (door: string, room: string): Saying => ({
  code: "door-not-placed",
  severity: "error",
  message: `the doorway ${quoted(door)} joins ${quoted(room)}, but the room does not place it in a wall`,
  mend: `add it under doors in the file of ${room}`,
})
/** A room places a door that does not join it. */
export const doorOfOtherRooms = (door: string, between: readonly string[]): Saying => ({
  code: "door-of-other-rooms",
  severity: "error",
  message: `the doorway ${quoted(door)} joins ${between.map(quoted).join(" and ")}, not this room`,
})
/** A door between a room and itself. */
export const doorToItself = (door: string, room: string): Saying => ({
  code: "door-to-itself",
  severity: "error",
  message: `the doorway ${quoted(door)} joins ${quoted(room)} with itself`,
})
/** A leaf that swings into a place the doorway does not join. */
export const swingsElsewhere = (door: string, into: string, between: readonly string[]): Saying => ({
  code: "swings-elsewhere",
  severity: "error",
  message: `the doorway ${quoted(door)} swings into ${quoted(into)}, which it does not join`,
  expected: between.map(quoted).join(" or "),
})

// Programme

/** A span that ends before it begins. */
export const spanReversed = (from: string, to: string): Saying => ({
  code: "span-reversed",
  severity: "error",
  message: `the span from ${from} to ${to} ends before it begins`,
})
/** Two working spans of a day that overlap. */
export const spansOverlap = (from: string, before: string): Saying => ({
  code: "spans-overlap",
  severity: "error",
  message: `a span begins at ${from}, before the one above it ends at ${before}`,
  mend: "write the spans in order of the day",
})

/** An opening as messages name it. */
export interface Opening {
  sort: "door" | "window"
  name: string
  wall: number
  fromLeft: number
  width: number
}

/** Text as it stood in the file, cut short, with invisible characters made visible. */
export function quoted(text: string): string {
  const longest = 60
  const cut = text.length > longest ? `${text.slice(0, longest)}…` : text
  const visible = cut.replace(/[\p{Cc}\p{Cs}\u2028\u2029\u200e\u200f\u202a-\u202e\u2066-\u2069]/gu, "·")
  return `'${visible}'`
}

/** A value as it is named in a message. */
export function shown(value: unknown): string {
  if (typeof value === "string") return `text ${quoted(value)}`
  if (Array.isArray(value)) return "a list"
  if (value === null || value === undefined) return "nothing"
  return typeof value === "object" ? "a mapping of keys" : String(value)
}

function didYouMean(near: string | undefined): Pick<Saying, "mend"> {
  return near ? { mend: `write ${near} if that is meant` } : {}
}

function listed(known: readonly string[]): Pick<Saying, "expected"> {
  return known.length ? { expected: `one of ${known.join(", ")}` } : {}
}

function bare(sentence: string): string {
  return sentence.replace(/\.$/, "")
}

function hex(character: string): string {
  const digits = 4
  return (character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(digits, "0")
}
