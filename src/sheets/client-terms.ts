import { dateText } from "../kernels/calendar/date-text.ts"
import type { Block, SheetModel } from "../kernels/paper.ts"
import { clientSheet } from "./client-sheet.ts"
import type { JobResult } from "./job-result.ts"

/** What the price rests on and leaves out, who must be told before the start, and who answers for what. */
export function termsSheet(result: JobResult): SheetModel {
  const { programme, house, moneyFile } = result
  const { assumptions = [], exclusions = [] } = moneyFile?.client ?? {}
  const noneFrom = result.rules.value("asbestos-free-from")
  const old =
    house.built === undefined || house.built < noneFrom
      ? [
          `Nothing holding asbestos is found. A house built or altered before ${noneFrom} may hold it; an asbestos survey comes before anything is cut into, and if some is found work stops there.`,
        ]
      : []
  const blocks: Block[] = [
    {
      kind: "list",
      caption: "The price and the days rest on this",
      items: [
        ...assumptions,
        "The rooms are empty and the way to them is free on the days given; water, power and a toilet may be used.",
        "What is behind walls and under floors is sound. If something else is found it is shown to you, and priced as a variation before it is mended.",
        "Choices are made by their days. Goods chosen are to be had in time.",
        ...old,
      ],
    },
    {
      kind: "list",
      caption: "Not in the price",
      items: [
        ...exclusions,
        "Curtains, blinds, loose furniture and lamps, and moving them.",
        "Mending what was broken before, unless it stands on the price.",
        "Fees of building control, of a structural engineer or of a neighbour’s surveyor for a party wall, unless they stand on the price.",
      ],
    },
    {
      kind: "checks",
      caption: `Before the work starts on ${dateText(programme.start)}`,
      items: [
        {
          text: "Home insurer told in writing: what is done, from when to when, that people live in the house, that doors or roof may be open. Ask whether cover changes and until when.",
          write: "Told on",
        },
        {
          text: "Builder’s insurance certificate seen: public liability, and in date until after the finish.",
          write: "Ends on",
        },
        { text: "Mortgage lender or landlord told, if there is one.", write: "Told on" },
        {
          text: "Neighbours told of days with noise, deliveries and skips; party wall agreed in writing if one is touched.",
          write: "Told on",
        },
        { text: "Building control told by the builder, and its number on the register.", write: "Number" },
        {
          text: "Who holds keys, how the house is locked each evening, and who is rung in the night if water runs.",
          write: "Ring",
        },
      ],
    },
    {
      kind: "list",
      caption: "Who answers for what",
      items: [
        "The builder answers for the work, for those who work for him, and for leaving the way out of the house free and one smoke alarm working every night.",
        "Building control inspects and gives the completion certificate; the electrician gives the electrical certificate. This pack advises and certifies nothing.",
        "You answer for your own things, for children and pets, and for telling us what you know of the house: old leaks, old wiring, what lies under a floor.",
        "If you and the builder do not agree: say it in writing first, with a day to put it right; then ask for an independent surveyor’s word before anyone takes work apart or keeps money back.",
      ],
    },
    { kind: "sign", roles: ["Client", "Builder"] },
  ]
  return clientSheet(
    {
      kind: "client-terms",
      title: "What was agreed, and who to tell",
      purpose: "What the price rests on, what is not in it, and what to see to before the start.",
      rests: old.length > 0 ? ["asbestos-free-from"] : [],
    },
    blocks,
  )
}
