/** Where a command's words go; tests hand in their own. */
export interface Terminal {
  out(text: string): void
  err(text: string): void
  /** A line that is written over while something long goes on; empty text ends it. */
  progress(text: string): void
}

/** The terminal a command was started in; progress is shown only where someone watches. */
export function standardTerminal(): Terminal {
  const watched = process.stderr.isTTY === true
  return {
    out: (text) => void process.stdout.write(`${text}\n`),
    err: (text) => void process.stderr.write(`${text}\n`),
    progress: (text) => {
      if (watched) process.stderr.write(`\r\u001b[K${text}`)
    },
  }
}

/** Seconds spent on each kind of lap in all, by name, in the order of their first. */
export function stopwatch(): { lap(name: string): void; laps(): [string, number][] } {
  const laps = new Map<string, number>()
  let last = performance.now()
  return {
    lap: (name) => {
      const now = performance.now()
      laps.set(name, (laps.get(name) ?? 0) + (now - last) / 1000)
      last = now
    },
    laps: () => [...laps],
  }
}
