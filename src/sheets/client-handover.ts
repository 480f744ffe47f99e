import { dateText } from "../kernels/calendar/date-text.ts"
import type { Block, SheetModel } from "../kernels/paper.ts"
import { clientSheet } from "./client-sheet.ts"
import type { JobResult } from "./job-result.ts"

interface Check {
  text: string
  write?: string
}

/** What to look at when the rooms are given back, and which papers must change hands. */
export function handoverSheet(result: JobResult): SheetModel {
  const did = (trade: string) =>
    result.results.some((each) => each.trade === trade && each.work.steps.length > 0)
  const part = (caption: string, on: boolean, items: Check[]): Block[] =>
    on ? [{ kind: "checks", caption, items }] : []
  const fire = result.orders.lines.some(({ product }) => product.kind === "leaf" && product.fire !== "none")
  return clientSheet(
    {
      kind: "client-handover",
      title: "What to check at handover",
      purpose: `Walk through the rooms with the builder by daylight, about ${dateText(result.programme.finish)}; tick what is right, write down what is not.`,
    },
    [
      ...part("Floors", did("floors"), [
        { text: "Walk every row: no board rocks, clicks or stands proud of the next." },
        {
          text: "Along the walls the boards end under the skirting, nowhere jammed against wall, pipe or door frame.",
        },
        {
          text: "The surface is even in colour and dry to the hand; scratches are looked for against the light.",
        },
      ]),
      ...part("Doors", did("doors"), [
        {
          text: "Each door shuts and latches at a light push, stays where it is left, and does not rub on the floor.",
        },
        { text: "The gap round each door is narrow and even to the eye." },
        ...(fire
          ? [
              {
                text: "Doors that hold back fire: the maker’s label on the top edge is there and not painted over, the strip in the edge is whole, a door with a closer shuts by itself. Ask to see the builder’s record of these doors.",
              },
            ]
          : []),
        { text: "A bathroom bolt opens from outside with a coin." },
      ]),
      ...part("Skirting and trim", did("joinery"), [
        { text: "Joints at corners are tight; no nail heads or gaps show through the paint." },
        { text: "Stair: edges firm, handrail firm, no step that feels higher or lower than the others." },
      ]),
      ...part("Paint", did("decorating"), [
        {
          text: "Stand two steps back, by daylight, without a lamp along the wall: even colour, no runs, no bare places.",
        },
        { text: "Behind doors, on top edges and beside sockets too." },
      ]),
      ...part("Tiles and water", did("tiling") || did("plumbing"), [
        {
          text: "Run every tap and the shower for some minutes; look under each for drips; water runs away without standing.",
        },
        {
          text: "Tiles sound the same when tapped; joints are full; the soft white joints are whole all round.",
        },
        {
          text: "Radiators get hot from end to end; you have been shown the stop tap and the radiator valves.",
        },
      ]),
      ...part("Electricity", did("electrics"), [
        { text: "Every socket, switch and light works; nothing hums or feels warm." },
        { text: "Smoke alarms: press the button on one, and all of them sound on every storey." },
        { text: "You have been shown the fuse box: every switch in it is labelled." },
      ]),
      {
        kind: "checks",
        caption: "Papers and things you are given",
        items: [
          { text: "Completion certificate of building control, or its date to come.", write: "Number" },
          ...(did("electrics") ? [{ text: "Electrical certificate.", write: "Number" }] : []),
          { text: "Handover record: what was used, colours, spares; and the makers’ leaflets." },
          { text: "Spare boards, tiles and tins, labelled, and keys.", write: "Kept at" },
          { text: "Aftercare sheet, gone through together." },
        ],
      },
      {
        kind: "table",
        caption: "Not right yet",
        columns: [
          { label: "Room", as: "write", width: 18 },
          { label: "What", as: "write", width: 46 },
          { label: "Put right by", as: "write", width: 18 },
          { label: "Seen", as: "tick", width: 8 },
        ],
        rows: Array.from({ length: 6 }, () => ({ cells: ["", "", "", ""] })),
        note: "Small faults do not stop handover; a room that is not safe to sleep in, a door or alarm that does not work, or a missing certificate does.",
      },
      { kind: "sign", roles: ["Client", "Builder"] },
    ],
  )
}
