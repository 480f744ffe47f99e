import type { SheetModel } from "../../../kernels/paper.ts"
import type { HungDoor } from "../hanging/hung-door.ts"
import { passText } from "./door-order.ts"

/** Record of the fire-resisting doors for the archive: label, certificate, gaps with limits, photographs, date and name. It claims nothing. */
export function recordSheet({
  doors,
  rests,
}: {
  doors: readonly HungDoor[]
  rests: readonly string[]
}): SheetModel[] {
  const fire = doors.filter((hung) => (hung.leaf?.minutes ?? 0) > 0 && hung.fitted)
  if (fire.length === 0) return []
  return [
    {
      kind: "door-record",
      title: "Record of fire-resisting doors",
      purpose: "What was hung, written in on the day; a record, no certificate.",
      room: null,
      trade: "doors",
      audience: ["office"],
      hosted: true,
      orientation: "landscape",
      datum: "Gaps in mm",
      blocks: [
        {
          kind: "table",
          caption: "Label, certificate and gaps as found after paint and floor",
          columns: [
            { label: "Door", as: "mark" },
            { label: "Side gap passes", as: "figure" },
            { label: "Foot passes", as: "figure" },
            { label: "Label number", as: "write", width: 3 },
            { label: "Certificate", as: "write", width: 3 },
            ...["Hinge side", "Lock side", "Head", "Foot"].map((label) => ({
              label,
              as: "write" as const,
              width: 2,
            })),
            { label: "Photo numbers", as: "write", width: 3 },
          ],
          rows: fire.map(({ door, fitted }) => ({
            cells: [
              door.id,
              passText(fitted!.gap),
              passText(fitted!.threshold),
              ...Array.from({ length: 7 }, () => ""),
            ],
          })),
        },
        {
          kind: "list",
          caption: "Photographs of each door",
          items: [
            "Label or plug on the edge",
            "Each hinge, open, with its mark",
            "Latch and keep",
            "Strips at head and both jambs",
            "Packing and filling of the lining before the architrave covers it",
            "Closed leaf from both sides, gauge in the gap",
          ],
        },
        { kind: "sign", roles: ["Who measured", "Foreman"] },
      ],
      rests: [...rests],
    },
  ]
}
