import type { Block, SheetModel } from "../kernels/paper.ts"
import { fixed } from "../kernels/units.ts"
import { storeyDrawing } from "../survey/drawings/storey-drawing.ts"
import { type StoreyPlan, storeyFindings, storeyPlans } from "../survey/storey-plan.ts"
import type { JobResult } from "./job-result.ts"

/** Each storey on one drawing: its rooms put together by the openings they share. */
export function storeyPlansSheet(result: JobResult): SheetModel | null {
  const plans = storeyPlans(result.house)
  if (plans.length === 0) return null
  return {
    kind: "storey-plans",
    title: "Storey plans",
    purpose: "How the rooms lie to each other, and which doorway is which.",
    room: null,
    trade: null,
    audience: ["trade", "office"],
    hosted: true,
    orientation: "portrait",
    datum: null,
    blocks: plans.flatMap((plan) => storeyBlocks(plan, result)),
    ...(result.job.foldOuts ? { foldOut: plans.flatMap(largePlan) } : {}),
    rests: ["survey-storey-overlap"],
  }
}

const doorwayKey = "A line across a doorway: two floors meet there; none: the floor runs through."

/** One storey alone on a fold-out. */
function largePlan(plan: StoreyPlan): Block[] {
  return [
    { kind: "heading", text: plan.storey.name },
    { kind: "drawing", drawing: storeyDrawing(plan), caption: doorwayKey, maxHeight: 195 },
  ]
}

function storeyBlocks(plan: StoreyPlan, result: JobResult): Block[] {
  const { storey, unplaced } = plan
  const doubts = storeyFindings(plan, result.rules).map(({ message }) => message)
  const blocks: Block[] = [
    { kind: "heading", text: storey.name },
    {
      kind: "drawing",
      drawing: storeyDrawing(plan),
      caption: doorwayKey,
      maxHeight: 140,
    },
  ]
  blocks.push({
    kind: "table",
    caption: "Rooms",
    columns: [
      { label: "Room", as: "mark", width: 10 },
      { label: "Name", width: 40 },
      { label: "Floor m²", as: "figure", width: 16 },
      { label: "Doorways", width: 40 },
    ],
    rows: [...plan.rooms.map(({ room }) => room), ...unplaced].map((room) => ({
      cells: [
        room.id,
        room.name,
        fixed(room.floorArea, 2),
        room.doors.map(({ door }) => door.id).join(", ") || "–",
      ],
    })),
  })
  if (unplaced.length > 0) {
    blocks.push({
      kind: "list",
      caption: "Not placed: no opening shared with the rooms drawn",
      items: unplaced.map(({ id, name }) => `${id} ${name}`),
    })
  }
  if (doubts.length > 0) blocks.push({ kind: "warning", caption: "Does not agree", items: doubts })
  return blocks
}
