import type { Caution } from "../trade.ts"

/** What can hurt at the saw and along the skirting. */
export function joineryCautions(mdf: boolean): Caution[] {
  const cautions: Caution[] = [
    {
      trade: "joinery",
      id: "mitre-saw",
      text: "Mitre saw: guard working, piece clamped, hands well clear, let the blade stop before lifting.",
      why: "Most saw injuries happen at the end of the cut and when clearing offcuts.",
      defer: "Follow the saw maker's instructions; unplug to change the blade.",
    },
    {
      trade: "joinery",
      id: "nailer",
      text: "Nail gun: finger off the trigger, disconnect before clearing a jam.",
      why: "Nails glance off knots and metal.",
      defer: "Follow the maker's instructions.",
    },
    {
      trade: "joinery",
      id: "scan-walls",
      text: "Scan walls before every fixing.",
      why: "Cables and pipes run behind skirting and beside doors.",
      defer: "Mark what is found; ask the licensed trade before fixing near it.",
    },
  ]
  if (mdf) {
    cautions.unshift({
      trade: "joinery",
      id: "mdf-dust",
      text: "MDF: saw outside or with extraction at the tool, wear a fitted dust mask.",
      why: "Its dust is fine, and counts as hardwood dust unless the maker says otherwise.",
      defer: "Keep below the workplace limit for wood dust; ask the maker for the safety data sheet.",
    })
  }
  return cautions
}
