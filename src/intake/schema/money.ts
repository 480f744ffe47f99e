import { z } from "zod"
import { amount, day, line, percent, refersTo, text } from "./values.ts"

/** A rate of VAT in per cent; which one holds is for a tax adviser to say. */
const vatRate = z
  .union([z.literal(20), z.literal(5), z.literal(0)])
  .meta({ description: "Rate of VAT in per cent: 20, 5 or 0." })

const because = text.meta({
  description: "The condition that makes the rate so, in words that will be printed.",
  examples: ["alteration of a house that is lived in"],
})

/** Lines of the price that carry another rate: a line must match every list that is written. */
const vatException = z
  .strictObject({
    percent: vatRate,
    because,
    trades: z.array(refersTo("trade")).min(1).max(20).optional(),
    rooms: z.array(refersTo("room")).min(1).max(50).optional(),
    products: z.array(refersTo("product")).min(1).max(100).optional(),
    lines: z
      .array(line)
      .min(1)
      .max(50)
      .optional()
      .meta({ description: "Plant, provisional sums and sums of variations, by their `what`." }),
  })
  .refine((each) => Boolean(each.trades ?? each.rooms ?? each.products ?? each.lines), {
    params: { code: "vat-of-nothing" },
    error: "expected at least one of trades, rooms, products, lines",
  })

const vat = z.strictObject({
  percent: vatRate,
  because,
  except: z
    .array(vatException)
    .max(20)
    .default([])
    .meta({ description: "Lines at another rate; the first entry that matches a line counts." }),
})

/** What a payment waits for: the start, the finish, or all work of a trade, in a room, or of a trade in a room. */
const milestone = z
  .strictObject({
    what: line.meta({ description: "The payment in plain words, for the client." }),
    percent: percent.meta({ description: "Share of the price, per cent; all shares make 100." }),
    at: z.enum(["start", "finish"]).optional(),
    done: z
      .strictObject({ trade: refersTo("trade").optional(), room: refersTo("room").optional() })
      .optional()
      .meta({ description: "Due when this trade is done, or this room, or this trade in this room." }),
  })
  .refine((each) => (each.at === undefined) !== (each.done === undefined), {
    params: { code: "milestone-unclear" },
    error: "expected either `at` or `done`",
  })

const payments = z.strictObject({
  within: z
    .number()
    .int()
    .min(0)
    .max(90)
    .meta({ description: "Days from a payment's milestone in which it is paid." }),
  stages: z
    .array(milestone)
    .min(1)
    .max(20)
    .refine((all) => Math.abs(all.reduce((sum, each) => sum + each.percent, 0) - 100) < 1e-9, {
      params: { code: "shares-not-whole" },
      error: "expected shares that make 100 per cent together",
    }),
})

const retention = z
  .strictObject({
    percent: percent.meta({ description: "Share of each payment held back, per cent." }),
    months: z
      .number()
      .int()
      .min(1)
      .max(24)
      .meta({ description: "Months from the finish until the second half is paid." }),
  })
  .meta({ description: "Money held back until faults are put right: half is paid at the finish." })

const client = z.strictObject({
  decisions: z
    .array(
      z.strictObject({
        by: day,
        what: line,
        product: refersTo("product")
          .optional()
          .meta({ description: "What is ordered once it is chosen; its last day to order is checked." }),
        sample: line.optional().meta({ description: "What to look at before choosing." }),
      }),
    )
    .max(50)
    .default([]),
  assumptions: z.array(text).max(50).default([]).meta({ description: "What the price rests on." }),
  exclusions: z.array(text).max(50).default([]).meta({ description: "What the price leaves out." }),
  notes: z.array(text).max(50).default([]),
})

/** `money.yaml`: rates and shares; private. */
export const moneyFile = z
  .strictObject({
    rates: z
      .array(z.strictObject({ crew: refersTo("crew"), perHour: amount }))
      .max(20)
      .meta({ description: "Price of one hour of one person, by crew." }),
    overheadAndProfit: percent,
    contingency: percent,
    vat,
    plant: z
      .array(
        z.strictObject({
          what: line.meta({ examples: ["dust extractor, M class"] }),
          number: z.number().positive().max(1000).default(1),
          unit: line.default("job").meta({ examples: ["week"] }),
          amount: amount.meta({ description: "Price of one unit, as quoted text." }),
        }),
      )
      .max(50)
      .default([])
      .meta({ description: "Hire, skips and the like." }),
    provisional: z
      .array(z.strictObject({ what: line, amount }))
      .max(50)
      .default([])
      .meta({ description: "Allowances for work whose extent is not known yet." }),
    payments: payments.optional(),
    retention: retention.optional(),
    client: client.prefault({}),
  })
  .meta({ id: "money", title: "money.yaml", description: "Labour rates, shares and VAT; never published." })
export type MoneyFile = z.infer<typeof moneyFile>
