import type { DryingProcessId } from "../../rulebook/drying.ts"
import { Rules } from "../../rulebook/rules.ts"
import { nextStep, type TimerAnswer } from "./timer.ts"
import type { TimerData } from "./timer-data.ts"

/** Makes the drying timer's page answer; called by the bundle in the browser. */
export function startTimer(): void {
  const form = document.querySelector<HTMLFormElement>("form[data-timer]")
  if (!form) return
  const { zone, rules: entries } = JSON.parse(form.dataset.timer ?? "") as TimerData
  const rules = new Rules(entries)
  const answer = document.getElementById("answer")!
  const field = (name: string) => form.elements.namedItem(name) as HTMLInputElement
  const start = field("start")
  if (start.value === "") start.value = clockNow(zone)
  form.hidden = false
  form.addEventListener("submit", (event) => {
    event.preventDefault()
    const [date = "", time = ""] = start.value.split("T")
    const figure = (name: string) => Number.parseFloat(field(name).value.replace(",", "."))
    const thickness = field("thickness").value.trim() === "" ? undefined : figure("thickness")
    const given = nextStep(
      {
        process: field("process").value as DryingProcessId,
        temperature: figure("temperature"),
        humidity: figure("humidity"),
        still: field("still").checked,
        start: { date, time: time.slice(0, 5) },
        zone,
        ...(thickness === undefined ? {} : { thickness }),
      },
      rules,
    )
    answer.textContent = answerText(given)
  })
}

/** The answer in words. */
export function answerText(answer: TimerAnswer): string {
  if ("doNot" in answer)
    return `Do not: ${answer.doNot}. Outside this the time is not known: change the air or wait, and ask the maker.`
  const days = answer.hours > 72 ? ` (${Math.ceil(answer.hours / 12) / 2} days)` : ""
  return `${answer.next}: not before ${answer.text}, ${answer.hours} h${days}. The hours alone do not end the wait: ${answer.until}.`
}

/** What the clock of the site shows now, as a field of date and time takes it. */
function clockNow(zone: string): string {
  return new Date().toLocaleString("sv-SE", { timeZone: zone }).replace(" ", "T").slice(0, 16)
}
