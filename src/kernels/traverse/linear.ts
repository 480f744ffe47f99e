/** One linear equation with few unknowns: places and factors. */
export interface SparseRow {
  places: readonly number[]
  factors: readonly number[]
}

/** A square matrix, row after row. */
export interface Matrix {
  size: number
  cells: Float64Array
}

/** A square matrix of zeros. */
export function zeros(size: number): Matrix {
  return { size, cells: new Float64Array(size * size) }
}

/** Adds weight times (row transposed times row) to a symmetric matrix, in place. */
export function addOuter({ size, cells }: Matrix, { places, factors }: SparseRow, weight: number): void {
  for (let i = 0; i < places.length; i++) {
    const line = places[i]! * size
    const factor = weight * factors[i]!
    for (let j = 0; j < places.length; j++) cells[line + places[j]!]! += factor * factors[j]!
  }
}

/** The lower triangle L of a positive definite matrix, L times its transpose; null if it is not positive definite. */
export function cholesky({ size, cells }: Matrix): Matrix | null {
  const lower = Float64Array.from(cells)
  for (let i = 0; i < size; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = lower[i * size + j]!
      for (let k = 0; k < j; k++) sum -= lower[i * size + k]! * lower[j * size + k]!
      if (i !== j) lower[i * size + j] = sum / lower[j * size + j]!
      else if (sum > 0) lower[i * size + i] = Math.sqrt(sum)
      else return null
    }
  }
  return { size, cells: lower }
}

/** Solves L times its transpose times x = right. */
export function solveCholesky({ size, cells }: Matrix, right: Float64Array): Float64Array {
  const x = Float64Array.from(right)
  for (let i = 0; i < size; i++) {
    let sum = x[i]!
    for (let k = 0; k < i; k++) sum -= cells[i * size + k]! * x[k]!
    x[i] = sum / cells[i * size + i]!
  }
  for (let i = size - 1; i >= 0; i--) {
    let sum = x[i]!
    for (let k = i + 1; k < size; k++) sum -= cells[k * size + i]! * x[k]!
    x[i] = sum / cells[i * size + i]!
  }
  return x
}

/** How many of some rows are independent: elimination with the largest pivot; rests below the threshold count as nothing. */
export function rankOf(rows: readonly SparseRow[], size: number, threshold: number): number {
  const dense = rows.map((row) => {
    const line = new Float64Array(size)
    for (const [i, place] of row.places.entries()) line[place] = line[place]! + row.factors[i]!
    return line
  })
  let rank = 0
  while (rank < dense.length) {
    const best = longest(dense, rank)
    if (best.length < threshold) break
    const swapped = dense[rank]!
    const pivot = dense[best.index]!
    dense[best.index] = swapped
    dense[rank] = pivot
    for (let place = 0; place < size; place++) pivot[place] = pivot[place]! / best.length
    for (const line of dense.slice(rank + 1)) project(line, pivot)
    rank++
  }
  return rank
}

function longest(lines: readonly Float64Array[], from: number): { index: number; length: number } {
  let best = { index: from, length: 0 }
  for (let index = from; index < lines.length; index++) {
    let squares = 0
    for (const factor of lines[index]!) squares += factor * factor
    const length = Math.sqrt(squares)
    if (length > best.length) best = { index, length }
  }
  return best
}

function project(line: Float64Array, unit: Float64Array): void {
  let along = 0
  for (let place = 0; place < line.length; place++) along += line[place]! * unit[place]!
  for (let place = 0; place < line.length; place++) line[place] = line[place]! - along * unit[place]!
}
