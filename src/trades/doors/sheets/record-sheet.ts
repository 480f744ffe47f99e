import type { SheetModel } from "../../../kernels/paper.ts"
import type { HungDoor } from "../hanging/hung-door.ts"
import { leafText } from "../hanging/leaf.ts"
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
          caption: "Label and certificate as found",
          columns: [
            { label: "Door", as: "mark", width: 2 },
            { label: "What was hung", width: 7 },
            ...["Label number", "Certificate", "Photo numbers"].map((label) => ({
              label,
              as: "write" as const,
              width: 5,
            })),
          ],
          rows: fire.map(({ door, leaf, work }) => ({
            cells: [door.id, leafText(leaf, door, work), "", "", ""],
          })),
        },
        {
          kind: "table",
          caption: "Gaps after paint and floor, at each point, mm",
          columns: [
            { label: "Door", as: "mark", width: 2 },
            { label: "Where", width: 4 },
            { label: "Passes", as: "figure", width: 3 },
            ...["Top or left", "Middle", "Bottom or right"].map((label) => ({
              label,
              as: "write" as const,
              width: 4,
            })),
          ],
          rows: fire.flatMap(({ door, fitted }) =>
            [
              ["Hinge side", passText(fitted!.gap)],
              ["Lock side", passText(fitted!.gap)],
              ["Head", passText(fitted!.gap)],
              ["Under the foot", passText(fitted!.threshold)],
            ].map(([where, passes]) => ({ cells: [door.id, where!, passes!, "", "", ""] })),
          ),
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
