import type { Block, Row, SheetModel } from "../kernels/paper.ts"
import type { JobResult } from "./job-result.ts"
import { isPaste } from "./words.ts"

/** Every paper that the job must have at its end, each with a box and the place it is kept. */
export function registerSheet(result: JobResult): SheetModel {
  const { house, orders, deliveries, rules, trades } = result
  const did = (trade: string) =>
    result.results.some((each) => each.trade === trade && each.work.steps.length > 0)
  const noneFrom = rules.value("asbestos-free-from")
  const old = house.built === undefined || house.built < noneFrom
  const substances = orders.lines.filter(({ product }) => hasSubstance(product))
  const working = trades.filter((trade) => did(trade.id))
  const part = (caption: string, papers: readonly string[]): Block[] =>
    papers.length > 0
      ? [
          {
            kind: "table",
            caption,
            columns: [
              { label: "Paper", width: 46 },
              { label: "Number or date", as: "write", width: 20 },
              { label: "Kept at", as: "write", width: 24 },
              { label: "Here", as: "tick", width: 8 },
            ],
            rows: papers.map((paper): Row => ({ cells: [paper, "", "", ""] })),
          },
        ]
      : []
  return {
    kind: "register",
    title: "Register of papers",
    purpose:
      "One box and one place for each paper; the job is not closed while a box is empty without a reason.",
    room: null,
    trade: null,
    audience: ["office"],
    hosted: false,
    orientation: "portrait",
    datum: null,
    blocks: [
      ...part("Before the start", [
        "Agreement with the client, signed, with its pack",
        "Construction-phase plan (every project has one)",
        ...(old ? [`Asbestos survey (house from before ${noneFrom}, or its year not known)`] : []),
        "Insurance certificates of the builder and of each trade",
        "Building control: notice given, reference",
        ...working.map((trade) => `Risk assessment and method, ${trade.title.toLowerCase()}`),
      ]),
      ...part("Inspections", [
        "Building control: structure and floor, before it is covered",
        "Building control: insulation and fire protection, before it is covered",
        "Building control: stair, guarding, escape route, doors and alarms, at the end",
        ...(did("plumbing") ? ["Pressure test of pipes, before they are covered"] : []),
        "Record of fire-resisting doors (J-59), filled in and signed",
        "Hold points of every room’s order of work, signed",
      ]),
      ...part("Certificates", [
        "Building control: completion certificate",
        ...(did("electrics")
          ? [
              "Electrical installation certificate, with its schedule of tests",
              "Electrical work notified, or its self-certification",
            ]
          : []),
        ...(did("plumbing")
          ? ["Heating and water: commissioning record, by whoever is registered for it"]
          : []),
        "Smoke alarms: test of all storeys together",
      ]),
      ...part(
        "Safety data sheets of what is used",
        substances.map(({ product }) => product.name),
      ),
      ...part(
        "Delivery notes",
        [...new Set(deliveries.drops.map((drop) => drop.supplier))].map((supplier) => {
          const count = deliveries.drops.filter((drop) => drop.supplier === supplier).length
          return `${supplier[0]!.toUpperCase()}${supplier.slice(1)}: ${count} ${count === 1 ? "note" : "notes"}`
        }),
      ),
      ...part("Waste", [
        "Waste carrier’s registration",
        "Transfer note: wood, plasterboard and mixed waste, each load",
        "Consignment note: paint, oil, solvent and anything hazardous",
      ]),
      ...part("At the end", [
        "Handover record (J-86), filled in, copy given",
        "Health and safety file given to the client, where more than one contractor worked",
        "Changes: each signed (J-77)",
        "Final account agreed; what is held back released on its days",
        "Archive pack, with the last revision issued",
      ]),
      { kind: "sign", roles: ["Office"] },
    ],
    rests: old ? ["asbestos-free-from"] : [],
  }
}

/** True for what may harm by breath, skin or fire and so has a safety data sheet. */
function hasSubstance(product: JobResult["orders"]["lines"][number]["product"]): boolean {
  if (product.kind === "liquid") return true
  return (
    product.kind === "each" && (product.holdsUnit === "kg" || product.holdsUnit === "l" || isPaste(product))
  )
}
