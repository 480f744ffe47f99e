import { decorating } from "./decorating/index.ts"
import { doors } from "./doors/index.ts"
import { electrics } from "./electrics/index.ts"
import { floors } from "./floors/index.ts"
import { joinery } from "./joinery/index.ts"
import { plumbing } from "./plumbing/index.ts"
import { tiling } from "./tiling/index.ts"
import type { Trade } from "./trade.ts"

/** The trades, in the order in which they stand on sheets; one line a trade. */
export const trades: readonly Trade[] = [
  floors,
  doors,
  joinery,
  tiling,
  plumbing,
  electrics,
  decorating,
] as readonly Trade[]
