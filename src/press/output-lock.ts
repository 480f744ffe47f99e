import {
  linkSync,
  mkdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from "node:fs"
import { hostname } from "node:os"
import { join } from "node:path"
import { Fault } from "../kernels/fault.ts"

/** Who writes into an output folder. */
interface Holder {
  pid: number
  host: string
  /** When the process began, as the system counts; tells a process from a later one of the same number. Empty where unknown. */
  began: string
}

/** The file that says that someone writes into the folder. */
const lockName = ".lock"

/** How often a holder shows that it lives, and after how long without a sign one on another machine is taken for dead, ms. */
const beat = 20_000
const silence = 600_000

/**
 * Takes an output folder for this process alone. A lock left by a process that is no more is taken over.
 * @throws Fault when another build writes into the folder
 */
export function takeLock(output: string): void {
  mkdirSync(output, { recursive: true })
  const lock = join(output, lockName)
  const own = `${lock}-${process.pid}-${Math.floor(performance.now() * 1000)}`
  writeFileSync(own, JSON.stringify(self()))
  try {
    for (let tries = 0; tries < mostTries; tries++) {
      if (linked(own, lock)) {
        keepAlive(lock)
        return
      }
      const text = textOf(lock)
      if (text === null) continue
      const holder = holderIn(text)
      if (holder && isAlive(holder, lock, own)) throw new Fault(takenText(output, holder))
      removeStale(lock, text)
    }
    throw new Fault(`${lock} changes hands faster than it can be taken; try again`)
  } finally {
    rmSync(own, { force: true })
  }
}

const mostTries = 20

/** True if this process holds the folder's lock. */
export function holdsLock(output: string): boolean {
  const text = textOf(join(output, lockName))
  return text !== null && text === JSON.stringify(self())
}

/** True if another live process writes into the folder. */
export function isHeldElsewhere(output: string): boolean {
  const lock = join(output, lockName)
  const text = textOf(lock)
  const holder = text === null ? null : holderIn(text)
  return holder !== null && !holdsLock(output) && isAlive(holder, lock, lock)
}

/** Gives the folder free again, if this process holds it. */
export function releaseLock(output: string): void {
  if (holdsLock(output)) rmSync(join(output, lockName), { force: true })
}

function self(): Holder {
  return { pid: process.pid, host: hostname(), began: beganOf(process.pid) }
}

/** The lock appears whole, with its text in it, or not at all. */
function linked(own: string, lock: string): boolean {
  try {
    linkSync(own, lock)
    return true
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException
    if (code === "EEXIST") return false
    if (!["EPERM", "ENOTSUP", "EOPNOTSUPP", "ENOSYS", "EMLINK"].includes(code ?? "")) throw error
  }
  // A file system without links: an exclusive file, whose text follows a moment later.
  try {
    writeFileSync(lock, JSON.stringify(self()), { flag: "wx" })
    return true
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "EEXIST") return false
    throw error
  }
}

/** Takes a stale lock away by its text, never one that another process has put there meanwhile. */
function removeStale(lock: string, text: string): void {
  const aside = `${lock}-stale-${process.pid}`
  try {
    renameSync(lock, aside)
  } catch {
    return
  }
  if (textOf(aside) !== text) linked(aside, lock)
  rmSync(aside, { force: true })
}

function isAlive({ pid, host, began }: Holder, lock: string, clock: string): boolean {
  if (host !== hostname()) return ageOf(lock, clock) < silence
  try {
    process.kill(pid, 0)
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === "EPERM"
  }
  const now = beganOf(pid)
  return now === "" || began === "" || now === began
}

/** Milliseconds since a lock gave its last sign, by the clock of the disk that both files lie on. */
function ageOf(lock: string, clock: string): number {
  const told = statSync(lock, { throwIfNoEntry: false })?.mtimeMs ?? 0
  const now =
    clock === lock ? Date.now() : (statSync(clock, { throwIfNoEntry: false })?.mtimeMs ?? Date.now())
  return now - told
}

/** Start of a process in the system's own ticks; empty where the system does not tell. */
function beganOf(pid: number): string {
  try {
    const stat = readFileSync(`/proc/${pid}/stat`, "utf8")
    // The name in brackets may hold spaces; the start is the 20th field after it.
    return stat.slice(stat.lastIndexOf(")") + 2).split(" ")[19] ?? ""
  } catch {
    return ""
  }
}

function keepAlive(lock: string): void {
  const timer = setInterval(() => {
    const now = new Date()
    try {
      if (textOf(lock) === JSON.stringify(self())) utimesSync(lock, now, now)
      else clearInterval(timer)
    } catch {
      clearInterval(timer)
    }
  }, beat)
  timer.unref()
}

function textOf(path: string): string | null {
  try {
    return readFileSync(path, "utf8")
  } catch {
    return null
  }
}

function holderIn(text: string): Holder | null {
  try {
    const { pid, host, began } = JSON.parse(text) as Partial<Holder>
    return typeof pid === "number" && typeof host === "string" ? { pid, host, began: began ?? "" } : null
  } catch {
    return null
  }
}

function takenText(output: string, { pid, host }: Holder): string {
  const where = host === hostname() ? "" : ` on ${host}`
  return (
    `another build is writing into ${output} (process ${pid}${where}): wait until it is done, or give this one a folder of its own ` +
    `with --output. If you are sure that none is running, remove ${join(output, lockName)}`
  )
}
