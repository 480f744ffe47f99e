import type { SheetModel } from "../kernels/paper.ts"

/**
 * The number of each kind of sheet: fixed for good, since it is printed on paper and stands in addresses. A new kind takes
 * the next free number of its block; a number is never used again for another kind.
 */
export const kindNumbers: Readonly<Record<string, number>> = {
  // one room
  glance: 1,
  sequence: 2,
  quantities: 3,
  floor: 4,
  doors: 5,
  joinery: 6,
  decorating: 7,
  drying: 8,
  cautions: 9,
  electrics: 10,
  plumbing: 11,
  tiling: 12,
  survey: 13,
  "door-tag": 14,
  snags: 15,
  "no-sleeping": 16,
  // the job
  contents: 50,
  "door-schedule": 51,
  "escape-route": 52,
  saw: 53,
  deliveries: 54,
  programme: 55,
  "who-is-where": 56,
  "paint-order": 57,
  "trade-visits": 58,
  "door-record": 59,
  "storey-plans": 60,
  "survey-form": 61,
  stair: 62,
  collections: 63,
  // the client
  "client-schedule": 70,
  "client-choices": 71,
  "client-price": 72,
  "client-cover": 73,
  "client-rooms": 74,
  "client-terms": 75,
  "client-payments": 76,
  "client-variations": 77,
  "client-handover": 78,
  "client-aftercare": 79,
  // the office
  workings: 80,
  rulebook: 81,
  orders: 82,
  price: 83,
  "revision-log": 84,
  variations: 85,
  "handover-record": 86,
  register: 87,
  // the site and the people in the house
  "end-of-day": 90,
  evenings: 91,
  "first-night": 92,
  "doors-below": 93,
  "trade-handover": 94,
  protection: 95,
  daywork: 96,
  diary: 97,
  "heat-before-wood": 98,
}

/** A sheet with the number printed on it, e.g. `A1-04`, and the same in small letters for its address. */
export interface Sheet extends SheetModel {
  number: string
  path: string
}

/** Sheets numbered by room (or J for the job) and kind; several of a kind carry their part too (`A1-05-D1`). */
export function numbered(
  models: readonly SheetModel[],
  kinds: Readonly<Record<string, number>> = kindNumbers,
): Sheet[] {
  const seen = new Map<string, number>()
  return models.map((model) => {
    const kind = kinds[model.kind]
    if (kind === undefined) throw new Error(`no sheet number for the kind "${model.kind}"`)
    const stem = [model.room ?? "J", String(kind).padStart(2, "0"), model.part].filter(Boolean).join("-")
    const before = seen.get(stem) ?? 0
    seen.set(stem, before + 1)
    const number = before === 0 ? stem : `${stem}${"abcdefghijklmnopqrstuvwxyz"[before]}`
    return { ...model, number, path: number.toLowerCase() }
  })
}
