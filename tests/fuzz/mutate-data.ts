import type { Random } from "./random.ts"

/** Plain data of one file, or a part of it. */
type Data = Record<string, unknown> | unknown[]

/** A place in plain data: what holds it, and under which key. */
interface Spot {
  holder: Data
  key: string | number
  /** The last key of text on the way, e.g. `length` for an item of `length: [...]`. */
  name: string
  /** The same of what holds it. */
  under: string
}

/** What may be put elsewhere: texts and parts of all demo jobs, by the key they stand under. */
export interface Pool {
  texts: readonly string[]
  /** By the key they stand under. */
  parts: ReadonlyMap<string, readonly unknown[]>
  /** Keys seen within what stands under a key. */
  keys: ReadonlyMap<string, readonly string[]>
}

/** Gathers the pool from the plain data of files. */
export function poolOf(files: readonly unknown[]): Pool {
  const texts = new Set<string>()
  const parts = new Map<string, unknown[]>()
  const keys = new Map<string, Set<string>>()
  for (const file of files) {
    for (const { holder, key, name, under } of spotsOf(file)) {
      const value = at(holder, key)
      if (typeof value === "string") texts.add(value)
      parts.set(name, [...(parts.get(name) ?? []), value])
      if (typeof key === "string") keys.set(under, (keys.get(under) ?? new Set()).add(key))
    }
  }
  return { texts: [...texts], parts, keys: new Map([...keys].map(([under, seen]) => [under, [...seen]])) }
}

/** Changes one thing of one file's data in place, as an author or an accident might. */
export function mutateData(file: unknown, pool: Pool, random: Random): void {
  const spots = spotsOf(file)
  if (spots.length === 0) return
  const figures = spots.filter(({ holder, key }) => typeof at(holder, key) === "number")
  const spot = random.of(figures.length > 0 && random.chance(0.4) ? figures : spots)
  const value = at(spot.holder, spot.key)
  const changes = typeof value === "number" ? [...ofNumber, ...ofNumber, ...ofNumber, ...any] : any
  random.of(changes)(spot, value, { pool, random })
}

type Change = (spot: Spot, value: unknown, from: { pool: Pool; random: Random }) => void

/** Mild changes first: most of them leave a job that can be built. */
const ofNumber: Change[] = [
  (spot, value, { random }) => put(spot, Math.round((value as number) * (0.5 + random.next()))),
  (spot, value, { random }) => put(spot, Math.round((value as number) * (0.9 + random.next() / 5))),
  (spot, value, { random }) => put(spot, (value as number) + random.of([-1, 1, -10, 10, 0.5])),
  (spot, value, { random }) => put(spot, (value as number) * random.of([0.001, 0.1, 10, 25.4, 1000, -1])),
  (spot, _, { random }) => put(spot, random.of(extremeNumbers)),
]

const any: Change[] = [
  (spot) => take(spot),
  (spot, value, { random }) => copyBeside(spot, value, random),
  (spot, value, { random }) => swap(spot, value, random),
  (spot, value, { pool, random }) => retarget(spot, value, pool, random),
  (spot, _, { pool, random }) => graft(spot, pool, random),
  (spot, _, { pool, random }) => graftBeside(spot, pool, random),
  (spot, _, { pool, random }) => graftBeside(spot, pool, random),
  (spot, value, { random }) => put(spot, otherKind(value, random)),
  (spot, value, { random }) => many(spot, value, random),
  (spot, value, { random }) => rename(spot, value, random),
]

const extremeNumbers = [
  0,
  -0,
  1,
  -1,
  0.1,
  1e-9,
  5e-324,
  59_999.5,
  60_000,
  2 ** 31,
  2 ** 53 + 2,
  1e21,
  1e308,
  -1e308,
  Number.NaN,
  Number.POSITIVE_INFINITY,
  Number.NEGATIVE_INFINITY,
]

/** Texts that break what handles text carelessly. */
export const hostileTexts = [
  "",
  " ",
  "\u05e9\u05dc\u05d5\u05dd",
  "\u202eterces",
  "a\u0000b",
  "bell\u0007",
  "line\nline",
  "tab\tbed",
  "e\u0301\u0301\u0301\u0301",
  "\ud83d\ude80 flag",
  "half \ud83d",
  "</td><script>alert(1)</script>",
  '" onload="x',
  "{{ 7 * 7 }}{% raw %}",
  "@@pages:a1-01@@",
  "=1+1",
  "../../../../etc/passwd",
  "__proto__",
  "constructor",
  "toString",
  "1e308",
  ".nan",
  "0x10",
  "010",
  "W".repeat(200),
  "word ".repeat(400),
  "x".repeat(5000),
]

function put({ holder, key }: Spot, value: unknown): void {
  if (Array.isArray(holder)) holder[key as number] = value
  else holder[key] = value
}

function take({ holder, key }: Spot): void {
  if (Array.isArray(holder)) holder.splice(key as number, 1)
  else delete holder[key]
}

function copyBeside({ holder, key }: Spot, value: unknown, random: Random): void {
  const copy = structuredClone(value)
  if (Array.isArray(holder)) holder.splice(key as number, 0, random.chance(0.5) ? renumbered(copy, 1) : copy)
  else holder[`${key}${random.of(["2", "s", "_", " "])}`] = copy
}

function swap({ holder, key }: Spot, value: unknown, random: Random): void {
  const other = random.of<string | number>(Array.isArray(holder) ? [...holder.keys()] : Object.keys(holder))
  const instead = at(holder, other)
  put({ holder, key, name: "", under: "" }, instead)
  put({ holder, key: other, name: "", under: "" }, value)
}

function retarget(spot: Spot, value: unknown, pool: Pool, random: Random): void {
  const kind = typeof value === "string" ? random.of(["graft", "graft", "text", "hostile"]) : "hostile"
  if (typeof value === "boolean") put(spot, !value)
  else if (kind === "graft") graft(spot, pool, random)
  else if (kind === "text") put(spot, random.of(pool.texts))
  else put(spot, random.of(hostileTexts))
}

/** Another part of the same name, from any job. */
function graft(spot: Spot, pool: Pool, random: Random): void {
  const parts = pool.parts.get(spot.name) ?? []
  if (parts.length > 0) put(spot, structuredClone(random.of(parts)))
}

/** A key or item more than there was: a trade's work, an option, a reading; mostly one that such a place may have. */
function graftBeside({ holder, name: own, under }: Spot, pool: Pool, random: Random): void {
  const fitting: readonly string[] = Array.isArray(holder) ? [own] : (pool.keys.get(under) ?? [])
  const name = random.of<string>(fitting.length > 0 && random.chance(0.9) ? fitting : [...pool.parts.keys()])
  const part = structuredClone(random.of(pool.parts.get(name)!))
  if (Array.isArray(holder)) holder.push(part)
  else holder[name] = part
}

function otherKind(value: unknown, random: Random): unknown {
  return random.of([
    null,
    true,
    [],
    {},
    [value],
    { value },
    String(value),
    random.of(hostileTexts),
    random.of(extremeNumbers),
  ])
}

/** A list many times as long, its ids kept apart. */
function many(spot: Spot, value: unknown, random: Random): void {
  const list = Array.isArray(value) ? value : Array.isArray(spot.holder) ? spot.holder : null
  if (!list || list.length === 0) return
  const times = random.of([3, 12, 60, 300])
  const item = random.of(list)
  for (let index = 0; index < times; index++) list.push(renumbered(structuredClone(item), index))
}

function renumbered(item: unknown, index: number): unknown {
  if (typeof item !== "object" || item === null || !("id" in item)) return item
  return { ...item, id: `${item.id}x${index}` }
}

function rename(spot: Spot, value: unknown, random: Random): void {
  if (Array.isArray(spot.holder)) return
  take(spot)
  const key = String(spot.key)
  spot.holder[random.of([key.toUpperCase(), key.slice(1), `${key} `, "", "toString", "length"])] = value
}

/** Every place of plain data, deepest included. */
function spotsOf(data: unknown, name = ""): Spot[] {
  if (typeof data !== "object" || data === null) return []
  const holder = data as Data
  const keys = Array.isArray(holder) ? [...holder.keys()] : Object.keys(holder)
  return keys.flatMap((key) => {
    const own = typeof key === "number" ? name : key
    return [{ holder, key, name: own, under: name }, ...spotsOf(at(holder, key), own)]
  })
}

function at(holder: Data, key: string | number): unknown {
  return (holder as Record<string | number, unknown>)[key]
}
