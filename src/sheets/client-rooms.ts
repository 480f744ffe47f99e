import { dateText } from "../kernels/calendar/date-text.ts"
import { addWorkingDays } from "../kernels/calendar/work-calendar.ts"
import type { Block, Row, SheetModel } from "../kernels/paper.ts"
import type { IsoDate } from "../kernels/units.ts"
import type { DatedStep } from "../programme/programme.ts"
import type { Room } from "../survey/room.ts"
import type { Stage } from "../trades/stages.ts"
import { nameOf, wetText } from "./client-schedule.ts"
import { clientSheet } from "./client-sheet.ts"
import type { JobResult } from "./job-result.ts"
import { cutsOff, daysText, workedDates } from "./plain-work.ts"

/** Rooms to empty and by when, rooms out of use, and when water, power or the stair are off, or dust, noise and smell to be expected. */
export function roomsSheet(result: JobResult): SheetModel | null {
  const rooms = emptied(result)
  if (rooms.length === 0) return null
  return clientSheet(
    {
      kind: "client-rooms",
      title: "Your rooms during the works",
      purpose: "Which rooms to empty by when, when you cannot use them, and what else to expect.",
    },
    [
      {
        kind: "table",
        caption: "Rooms to empty, and when they are out of use",
        columns: [
          { label: "Room", width: 17 },
          { label: "Ready by the evening of", as: "figure", width: 19 },
          { label: "What to do", width: 27 },
          { label: "Worked in on", width: 30 },
          { label: "Done", as: "tick", width: 7 },
        ],
        rows: rooms.map(
          ({ room, by, what, days }): Row => ({
            cells: [room.name, dateText(by), what, days, ""],
          }),
        ),
        note: "A room is yours again each evening unless it stands under “Nobody walks here” below; its furniture stays out until the covers come off.",
      },
      ...troubles(result),
      {
        kind: "list",
        caption: "Please",
        items: [
          "Take curtains, pictures and anything that breaks off the walls of these rooms, and off the other side of the walls that are drilled.",
          "Keep the stair and the way from the front door free each morning, and children and pets out of the rooms that are worked in: tools, blades and wet floors.",
          "Leave the covers on the floors where they are, and the radiators and windows as we set them while things dry.",
          "Tell us of anyone with asthma, allergies, night work or trouble on stairs, so that dust, smell and noise are planned round them.",
        ],
      },
    ],
  )
}

/** The rooms worked in, with the evening by which they are to be ready: the working day before the first work in each. */
export function emptied(result: JobResult): { room: Room; by: IsoDate; what: string; days: string }[] {
  const { programme, house } = result
  return house.rooms.flatMap((room) => {
    const own = programme.steps.filter(({ step }) => step.room === room.id && step.hours > 0)
    if (own.length === 0) return []
    const dates = own.flatMap((each) => workedDates(each, programme)).sort()
    return [
      {
        room,
        by: addWorkingDays(dates[0]!, -1, programme.calendar),
        what: own.some(({ step }) => fillsRoom.has(step.stage))
          ? "Empty it wholly, cupboards too"
          : "Clear the floor round the doors and the way to them; the rest is covered",
        days: daysText(dates, programme),
      },
    ]
  })
}

/** Stages that need a whole room, not only its doorway. */
const fillsRoom: ReadonlySet<Stage> = new Set([
  "mist",
  "white",
  "tile",
  "deck",
  "acclimatise",
  "floor",
  "oil",
])

function troubles(result: JobResult): Block[] {
  const { programme, house, programmeFile } = result
  const { steps } = programme
  const worked = steps.filter(({ step }) => step.hours > 0)
  const days = (test: (each: DatedStep) => boolean) =>
    daysText(
      worked.filter(test).flatMap((each) => workedDates(each, programme)),
      programme,
    )
  const where = (test: (each: DatedStep) => boolean) =>
    [...new Set(worked.filter(test).map((each) => nameOf(each, result)))].join(", ")
  const onStair = new Set(house.stairs.flatMap((stair) => [stair.fromRoom, stair.toRoom]))
  const wet = steps.filter(({ step }) => step.gate?.forbids.includes("walk"))
  const wetStair = wet.filter(({ step }) => step.room !== null && onStair.has(step.room))
  const smells = (each: DatedStep) => each.step.fumes === true
  const paints = ({ step }: DatedStep) => painted.has(step.stage) && step.trade === "decorating"
  const quiet = programmeFile.quiet.map(
    (each) => `${each.days.map(dayWord).join(", ")} ${each.from} to ${each.to}`,
  )
  const rows: [string, string, string][] = [
    [
      "Nobody walks here",
      wetText(wet, result),
      "Wet glue, grout or oil: one step spoils it. Lay in what you need from there the day before.",
    ],
    [
      "Stair and landing",
      wetText(wetStair, result),
      "Plan bedtime and nights round this; the builder walks it through with you the day before.",
    ],
    [
      "Water",
      days(({ step }) => cutsOff[step.trade] === "water"),
      "May be off for some hours in the working day. Fill a kettle; it is on again each evening.",
    ],
    [
      "Power",
      days(({ step }) => cutsOff[step.trade] === "power"),
      "May be off, mostly in the room worked in. Shut computers down; the fridge and freezer stay shut. On again each evening.",
    ],
    [
      "Dust",
      days(({ step }) => step.dusty),
      `Sanding or sawing in: ${where(({ step }) => step.dusty)}. Doors shut, covers left on.`,
    ],
    [
      "Noise",
      days(({ step }) => step.noisy),
      quiet.length > 0
        ? `None on ${quiet.join("; ")}: agreed hours of quiet.`
        : "Hammering, sawing or drilling in working hours.",
    ],
    ["Smell of paint", days(paints), "Windows ajar in the painted room, its door shut."],
    [
      "Strong smell",
      days(smells),
      "Oil or spirit-based coats: sleep away from that storey that night, and no flame or cigarette near.",
    ],
  ]
  const shown = rows.filter(([, when]) => when !== "")
  if (shown.length === 0) return []
  return [
    {
      kind: "table",
      caption: "What is off, shut or unpleasant, and when",
      columns: [
        { label: "What", width: 15 },
        { label: "When", width: 45 },
        { label: "What it means for you", width: 40 },
      ],
      rows: shown.map((cells) => ({ cells: [...cells] })),
    },
  ]
}

const painted: ReadonlySet<Stage> = new Set(["mist", "white", "woodwork", "last-coat"])

function dayWord(day: string): string {
  return `${day[0]!.toUpperCase()}${day.slice(1)}`
}
