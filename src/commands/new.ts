import { randomInt } from "node:crypto"
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs"
import { dirname, join } from "node:path"
import { fileURLToPath } from "node:url"
import { exitStatus, type NewOptions, newOptions, type Outlets, WrongUsage } from "./arguments.ts"

/** What `new` needs besides its arguments. */
export interface NewNeeds extends Outlets {
  /** The day the folder is made on, YYYY-MM-DD. */
  today: string
}

/**
 * `npm run new -- REF`: writes a commented job folder that builds as it stands, with a code of its own that cannot be guessed.
 * An existing folder is never touched.
 * @returns exit status: 0 done, 2 wrong usage, a bad ref or a folder that is there already
 */
export async function newCommand(args: readonly string[], { out, err, today }: NewNeeds): Promise<number> {
  let options: NewOptions
  try {
    options = newOptions(args)
  } catch (error) {
    if (!(error instanceof WrongUsage)) throw error
    err(error.message)
    return error.exitStatus
  }
  const dir = join(options.jobsDir, options.ref)
  if (existsSync(dir)) {
    err(`${dir} is there already; nothing was written`)
    return exitStatus.wrongUsage
  }
  const filled = { ref: options.ref, code: newCode(), today, start: daysLater(today, daysToStart) }
  for (const file of templateFiles()) writeFilled(file, join(dir, file), filled)
  out(`${dir} is written. Fill in its files, then: npm run check -- --only ${options.ref}`)
  out(
    `Blank survey sheets to take to site: npm run build, then print/${options.ref}/survey-forms.pdf in the output folder`,
  )
  return exitStatus.done
}

/** 8 characters drawn from 32, which is 40 bits: nobody finds a job's address by trying. */
export function newCode(): string {
  const letters = "0123456789abcdefghjkmnpqrstvwxyz"
  const characters = 8
  return Array.from({ length: characters }, () => letters[randomInt(letters.length)]).join("")
}

/** From the day the folder is made to the start it proposes: time to measure and to order. */
const daysToStart = 28

const templates = fileURLToPath(new URL("../../templates/new-job", import.meta.url))

function templateFiles(): string[] {
  return readdirSync(templates, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".yaml"))
    .toSorted()
}

function writeFilled(file: string, path: string, filled: Record<string, string>): void {
  const text = readFileSync(join(templates, file), "utf8")
  mkdirSync(dirname(path), { recursive: true })
  writeFileSync(
    path,
    text.replace(/\{\{(\w+)\}\}/g, (whole, key: string) => filled[key] ?? whole),
  )
}

function daysLater(day: string, days: number): string {
  const moved = new Date(`${day}T00:00:00Z`)
  moved.setUTCDate(moved.getUTCDate() + days)
  return moved.toISOString().slice(0, day.length)
}
