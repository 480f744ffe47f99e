import type { Finding } from "../../../kernels/finding.ts"
import { fixed, mmText } from "../../../kernels/units.ts"
import type { Rules } from "../../../rulebook/rules.ts"
import { limitsOf } from "./limits.ts"
import type { StairSeen } from "./stair.ts"

/**
 * What building control is to be asked about a stair: rises that finishes make unequal, figures outside guidance, an open edge
 * without guarding. A stair that this job leaves as it is has notes only.
 */
export function stairFindings(seen: StairSeen, rules: Rules): Finding[] {
  const { stair, index, changes, work } = seen
  const at = { file: "house.yaml", path: ["stairs", index] }
  const severity = changes ? "warning" : "note"
  const outside = limitsOf(seen, rules)
    .filter((limit) => !limit.within)
    .map(
      (limit): Finding => ({
        code: `stair-${limit.code}`,
        severity,
        at,
        message: `${stair.name} (${stair.id}): ${limit.what.toLowerCase()} ${limit.here}; guidance says ${limit.says}.${limit.code === "unequal" ? ` ${endsText(seen)}` : ""}`,
        mend:
          limit.code === "unequal"
            ? "Ask building control; even the rises out with what is laid on the treads, or with the floor at foot or head."
            : "Ask building control before it is built or covered.",
      }),
    )
  const guarded = (work?.parts ?? [])
    .filter(({ what }) => what === "guarding" || what === "handrail")
    .flatMap(({ lengths }) => lengths)
    .reduce((sum, length) => sum + length, 0)
  if (guarded >= stair.openEdge) return outside
  return [
    ...outside,
    {
      code: "open-edge-not-guarded",
      severity: "note",
      at: { ...at, path: [...at.path, "openEdge"] },
      message: `${stair.name} (${stair.id}): open edge of ${mmText(stair.openEdge)} mm, guarding of ${mmText(guarded)} mm is written.`,
      mend: `Write its guarding under stairs of the joinery of ${stair.toRoom}, or see that somebody else provides it.`,
    },
  ]
}

function endsText({ rises, below, above }: StairSeen): string {
  const first = rises[0]!
  const last = rises[rises.length - 1]!
  return `First rise ${fixed(first.after, 1)} over a floor of ${mmText(below)}, last ${fixed(last.after, 1)} under a floor of ${mmText(above)}.`
}
