import type { Block, SheetModel } from "../../../kernels/paper.ts"
import type { Task, Work } from "../../trade.ts"
import { shortCautions } from "../cautions.ts"
import type { HungDoor } from "../hanging/hung-door.ts"
import { leafText } from "../hanging/leaf.ts"
import type { DoorsInputs } from "../inputs.ts"
import { rulesRead } from "../rules-read.ts"
import { doorsOfRoom } from "../work.ts"
import { doorBlocks } from "./door-blocks.ts"

/** The door sheet of one room: each leaf to hang, from drawing to checks; and the doors that stay. */
export function doorSheets(task: Task<DoorsInputs>, work: Work): SheetModel[] {
  const { job, room, input } = task
  const rules = rulesRead(job.rules)
  const doors = doorsOfRoom(task, rules)
  if (doors.length === 0) return []
  const notes = [input.note, ...doors.map(noteOf)].filter((each) => each !== undefined)
  const warnings = work.findings.filter((finding) => finding.severity !== "note")
  if (work.cautions.some((caution) => caution.id === "door-two-people")) rules.value("door-two-people")
  const hung = doors.filter((each) => each.fitted)
  const only = hung.length === 1 ? hung[0] : undefined
  const blocks = hung.flatMap((each) => [
    ...(only ? [] : [{ kind: "heading" as const, text: `Door ${each.door.id}: ${each.door.name}` }]),
    ...doorBlocks(each, each.fitted!, job, rules),
  ])
  return [
    {
      kind: "doors",
      title: only ? `Door ${only.door.id}: ${only.door.name}` : "Doors",
      purpose: only ? "Hang the leaf from this sheet." : "Hang each leaf from this sheet.",
      room: room.id,
      trade: "doors",
      audience: ["trade", "office"],
      hosted: true,
      orientation: "portrait",
      datum: "Heights from the higher finished floor under the leaf, mm.",
      blocks: [
        ...(warnings.length > 0
          ? [
              {
                kind: "warning" as const,
                caption: "Settle before cutting",
                items: warnings.map((finding) => `${finding.message} ${finding.mend ?? ""}`.trim()),
              },
            ]
          : []),
        ...(notes.length > 0 ? [{ kind: "text" as const, paragraphs: notes, as: "note" as const }] : []),
        ...blocks,
        ...unhung(doors),
        { kind: "cautions", items: shortCautions(work.cautions) },
        { kind: "sign", roles: ["Joiner", "Foreman"] },
      ],
      rests: rules.ids(),
    },
  ]
}

function noteOf(hung: HungDoor): string | undefined {
  const words = [hung.door.note, hung.work.note].filter((each) => each !== undefined).join(" ")
  return words ? `Door ${hung.door.id}: ${words}` : undefined
}

function unhung(doors: readonly HungDoor[]): Block[] {
  const rest = doors.filter((hung) => !hung.fitted)
  if (rest.length === 0) return []
  return [
    {
      kind: "table",
      caption: "Doorways of this room that no leaf is worked out for",
      columns: [
        { label: "Door", as: "mark" },
        { label: "What hangs there", width: 4 },
        { label: "Guidance's minimum", width: 4 },
        { label: "Found", as: "write", width: 3 },
      ],
      rows: rest.map((hung) => ({
        cells: [hung.door.id, leafText(hung.leaf, hung.door, hung.work), hung.ask.minimumText, ""],
      })),
    },
  ]
}
