/** A broken invariant of our own making: never the author's fault. Commands turn it into exit status 3. */
export class Fault extends Error {
  override name = "Fault"
}

/** Throws a `Fault` naming the invariant when it does not hold. */
export function invariant(holds: unknown, what: string): asserts holds {
  if (!holds) throw new Fault(what)
}
