import { readFileSync } from "node:fs"
import { join } from "node:path"
import { ref, top } from "./job-copy.ts"

/** What must never leave the office: each stands once in the job's files, and nowhere else. */
export const secrets = {
  client: "Secret client Zaunkoenig",
  provisional: "Secret allowance Zaunkoenig",
  decision: "Secret choice Zaunkoenig",
  note: "Secret note Zaunkoenig",
  assumption: "Secret assumption Zaunkoenig",
  exclusion: "Secret exclusion Zaunkoenig",
  sample: "Secret sample Zaunkoenig",
  because: "Secret condition Zaunkoenig",
  plant: "Secret hire Zaunkoenig",
  payment: "Secret payment Zaunkoenig",
  change: "Secret change Zaunkoenig",
  changeWhy: "Secret reason Zaunkoenig",
  changeSum: "Secret shelf Zaunkoenig",
  asked: "Secret asker Zaunkoenig",
  rate: "71.37",
  decoratorRate: "72.41",
  overhead: "13.373",
  contingency: "7.919",
  provisionalAmount: "8765.43",
  plantAmount: "4321.98",
  changeAmount: "6543.21",
}

/** The catalogue with a price of its own for each size sold, which stands nowhere else. */
export const marked: string[] = []
const markedCatalogue = readFileSync(join(top, "jobs", "catalogue.yaml"), "utf8").replace(
  /(price(?:PerM2)?: )"[\d.]+"/g,
  (_, key: string) => {
    const price = `${8101 + marked.length * 3}.37`
    marked.push(price)
    return `${key}"${price}"`
  },
)

const money = `rates:
  - { crew: joiner, perHour: "${secrets.rate}" }
  - { crew: decorator, perHour: "${secrets.decoratorRate}" }
overheadAndProfit: ${secrets.overhead}
contingency: ${secrets.contingency}
vat: { percent: 20, because: ordinary work, except: [{ percent: 5, because: ${secrets.because}, trades: [decorating] }] }
plant: [{ what: ${secrets.plant}, amount: "${secrets.plantAmount}" }]
payments: { within: 7, stages: [{ what: ${secrets.payment}, percent: 100, at: finish }] }
retention: { percent: 5, months: 6 }
provisional:
  - { what: ${secrets.provisional}, amount: "${secrets.provisionalAmount}" }
client:
  decisions: [{ by: 2027-03-20, what: ${secrets.decision}, sample: ${secrets.sample} }]
  assumptions: [${secrets.assumption}]
  exclusions: [${secrets.exclusion}]
  notes: [${secrets.note}]
`

const variations = `variations:
  - id: V1
    on: 2027-03-01
    asked: ${secrets.asked}
    what: ${secrets.change}
    why: ${secrets.changeWhy}
    accepted: 2027-03-01
    sums: [{ what: ${secrets.changeSum}, amount: "${secrets.changeAmount}" }]
`

/** The job's files with a secret in every field of money and of the client. */
export const secretFiles: Readonly<Record<string, string>> = {
  "catalogue.yaml": markedCatalogue,
  [`${ref}/money.yaml`]: money,
  [`${ref}/variations.yaml`]: variations,
}
