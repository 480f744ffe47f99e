import { Fault } from "../kernels/fault.ts"

/** What went wrong on our side or the machine's, in plain words, with what to do about it. */
export function faultWords(error: unknown): string {
  const chain = causes(error)
  const fault = chain.find((each) => each instanceof Fault)
  if (fault) return fault.message
  for (const each of chain) {
    const { code, path, dest } = each as NodeJS.ErrnoException & { dest?: string }
    const words = code === undefined ? undefined : systemWords[code]
    if (words) return `${words(dest ?? path ?? "a file")} ${stands}`
  }
  return `Something went wrong on our side: ${chain[chain.length - 1]?.message ?? String(error)}`
}

/** The deepest of what was thrown, for its trace. */
export function rootCause(error: unknown): Error | null {
  return causes(error).at(-1) ?? null
}

const stands = "The last output stands as it was."

const forbidden = (path: string) =>
  `${path} may not be written: the folder is read-only or belongs to someone else. Give it free, or choose another with --output.`

const systemWords: Readonly<Record<string, (path: string) => string>> = {
  ENOSPC: (path) => `The disk is full: ${path} could not be written. Make room and try again.`,
  EDQUOT: (path) =>
    `Your share of the disk is used up: ${path} could not be written. Make room and try again.`,
  EFBIG: (path) => `${path} is larger than this system allows a file to be.`,
  EROFS: forbidden,
  EACCES: forbidden,
  EPERM: forbidden,
  ENOTDIR: (path) => `${path} lies below a file, where only a folder can hold it.`,
  EBUSY: (path) => `${path} is in use: close what shows it and try again.`,
  EMFILE: () => "Too many files are open on this machine: close something and try again.",
}

/** An error and what caused it, outermost first. */
function causes(error: unknown): Error[] {
  const chain: Error[] = []
  for (let each = error; each instanceof Error && !chain.includes(each); ) {
    chain.push(each)
    const { cause, originalError } = each as Error & { originalError?: unknown }
    each = cause ?? originalError
  }
  return chain
}
