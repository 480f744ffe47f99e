/** Files that only name types: there is nothing in them to test. */
export const typesOnly: string[] = [
  "src/intake/job.ts",
  "src/kernels/cutting/problem.ts",
  "src/kernels/drawing/shapes.ts",
  "src/kernels/paper.ts",
  "src/kernels/traverse/survey.ts",
  "src/orders/orders.ts",
  "src/press/request.ts",
  "src/programme/programme.ts",
  "src/rulebook/entry.ts",
  "src/survey/room.ts",
]

/** Files tested at another path, and the test that imports them: tables of entries, lists of parts, schemas of files. */
export const coveredElsewhere: Record<string, string> = {
  "src/intake/schema/house.ts": "tests/intake/schema/schemas.test.ts",
  "src/intake/schema/job.ts": "tests/intake/schema/schemas.test.ts",
  "src/intake/schema/money.ts": "tests/intake/schema/schemas.test.ts",
  "src/intake/schema/products.ts": "tests/intake/schema/schemas.test.ts",
  "src/intake/schema/programme.ts": "tests/intake/schema/schemas.test.ts",
  "src/intake/schema/room.ts": "tests/intake/schema/schemas.test.ts",
  "src/intake/schema/values.ts": "tests/intake/schema/schemas.test.ts",
  "src/intake/schema/variations.ts": "tests/intake/schema/schemas.test.ts",
  "src/orders/rules.ts": "tests/rulebook-of.test.ts",
  "src/trades/decorating/index.ts": "tests/trades/index.test.ts",
  "src/trades/doors/escape/rules.ts": "tests/rulebook-of.test.ts",
  "src/trades/doors/hanging/hinge-rules.ts": "tests/rulebook-of.test.ts",
  "src/trades/doors/hanging/output-rules.ts": "tests/rulebook-of.test.ts",
  "src/trades/doors/hanging/rules.ts": "tests/rulebook-of.test.ts",
  "src/trades/doors/index.ts": "tests/trades/index.test.ts",
  "src/trades/electrics/index.ts": "tests/trades/index.test.ts",
  "src/trades/floors/index.ts": "tests/trades/index.test.ts",
  "src/trades/plumbing/index.ts": "tests/trades/index.test.ts",
  "src/trades/tiling/index.ts": "tests/trades/index.test.ts",
}
