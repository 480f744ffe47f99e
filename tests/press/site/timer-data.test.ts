import { expect, it } from "vitest"
import { type TimerData, timerData } from "../../../src/press/site/timer-data.ts"
import { dryingHours, dryingProcesses } from "../../../src/rulebook/drying.ts"
import { Rules } from "../../../src/rulebook/rules.ts"
import { smallResult } from "../../fixtures/small-job.ts"

it("carries every entry that any process needs, with the job's own values", async () => {
  const override = { id: "drying-emulsion-hours", value: 6, reason: "the maker of this paint says 6 h" }
  const result = await smallResult((read) => ({ job: { ...read.job, overrides: [override] } }))
  const { data, choices } = timerData(result)
  const { zone, rules } = JSON.parse(data) as TimerData
  expect(zone).toBe("Europe/London")
  const carried = new Rules(rules)
  const air = { temperature: 20, humidity: 60 }
  expect(dryingHours("emulsion", air, carried)).toBe(6)
  expect(choices.map(({ id }) => id)).toEqual(Object.keys(dryingProcesses))
  for (const id of Object.keys(dryingProcesses) as (keyof typeof dryingProcesses)[])
    expect(dryingHours(id, air, carried)).toBe(dryingHours(id, air, result.rules))
})
