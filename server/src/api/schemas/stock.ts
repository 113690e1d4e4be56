import * as z from "zod";
import { dateSchema, findingSchema, idSchema, instantSchema, localSchema, textSchema } from "./common.ts";
import { named } from "./named.ts";

/** What an item puts aboard when it is packed, by the names of the country kit, and its own dates. */
const itemFields = {
  kind: textSchema(40),
  /** its number or name on the shelf */
  name: textSchema(80),
  size: textSchema(40).optional(),
  count: z.int().min(1).max(1000),
  /** first and last day on which it may be used */
  validFrom: dateSchema.optional(),
  expiresOn: dateSchema.optional(),
  retiredOn: dateSchema.optional(),
  puts: z.array(textSchema(40)).max(30).default([]),
  /** a certificate is made out for one vehicle */
  vehicleId: idSchema.optional(),
  note: z.string().max(500).optional(),
};
export const newStockItemSchema = named("NewStockItem", z.strictObject(itemFields));
export const changeStockItemSchema = named(
  "ChangeStockItem",
  z.strictObject({ ...itemFields, version: z.int().min(1), reason: textSchema(300) }),
);

const holdSchema = z.object({
  id: idSchema,
  hireId: idSchema,
  reference: z.string(),
  customer: z.string(),
  count: z.int(),
  from: localSchema,
  to: localSchema,
  packedAt: instantSchema.nullable(),
});
export const stockItemSchema = named(
  "StockItem",
  z.object({
    id: idSchema,
    ...itemFields,
    puts: z.array(z.string()),
    version: z.int(),
    /** counted by the terms alone, without things of its own on the shelf */
    byTerms: z.boolean(),
    /** of its last day against today: over, within 60 days, or good */
    date: z.enum(["good", "soon", "over", "retired"]),
    freeNow: z.int(),
    /** who has it now or will */
    holds: z.array(holdSchema),
  }),
);
export const stockListSchema = named(
  "StockList",
  z.object({ today: dateSchema, items: z.array(stockItemSchema) }),
);
export const stockHistorySchema = named(
  "StockHistory",
  z.object({
    item: stockItemSchema,
    history: z.array(
      z.object({
        at: instantSchema,
        by: z.string(),
        act: z.string(),
        reference: z.string().nullable(),
        note: z.string(),
      }),
    ),
    past: z.array(holdSchema),
  }),
);

const askSchema = z.strictObject({
  kind: textSchema(40),
  size: textSchema(40).optional(),
  count: z.int().min(1).max(50),
});
export const hireStockSchema = named(
  "HireStock",
  z.object({
    /** asked for beside the extras of the quote */
    asks: z.array(askSchema),
    /** of the asks: what a change of them is based on */
    version: z.int(),
    /** held by this hire: from the booking on */
    holds: z.array(
      z.object({
        id: idSchema,
        itemId: idSchema,
        kind: z.string(),
        name: z.string(),
        size: z.string().nullable(),
        count: z.int(),
        puts: z.array(z.string()),
        expiresOn: dateSchema.nullable(),
        packedAt: instantSchema.nullable(),
        isBack: z.boolean(),
      }),
    ),
    /** kinds and sizes that the depot has */
    kinds: z.array(z.object({ kind: z.string(), sizes: z.array(z.string()) })),
    /** what is short for these dates as asked */
    findings: z.array(findingSchema),
    short: z.array(
      z.object({
        kind: z.string(),
        holders: z.array(
          z.object({
            reference: z.string(),
            customer: z.string(),
            count: z.int(),
            from: localSchema,
            to: localSchema,
          }),
        ),
        backAt: localSchema.nullable(),
        fitsFrom: localSchema.nullable(),
      }),
    ),
  }),
);
export const setHireStockSchema = named("SetHireStock", z.strictObject({ asks: z.array(askSchema).max(30) }));
export const stockActSchema = named(
  "StockAct",
  z.strictObject({ act: z.enum(["pack", "unpack", "back"]), note: z.string().max(300).optional() }),
);
export const stockShortSchema = hireStockSchema.shape.short;
