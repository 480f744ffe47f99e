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

/** Files tested at another path, and the test that imports them. */
export const coveredElsewhere: Record<string, string> = {}
