import { termsSchema } from "@setfair/engine";
import * as z from "zod";
import { PRICE_LISTS } from "../../import/price-list-names.ts";
import { ENCODINGS } from "../../import/read-table.ts";
import { dateSchema, idSchema, instantSchema } from "./common.ts";
import { named } from "./named.ts";

const { kit, damage } = termsSchema.shape.tariff.shape;
const nameSchema = z.string().min(1).max(60);
const kitSchema = named("KitValues", z.record(nameSchema, kit.def.valueType));
const repairSchema = named("RepairPrice", damage.def.element);
const sinceSchema = named(
  "PriceSince",
  z.object({
    /** first day on which it has been as it is */
    from: dateSchema,
    /** who wrote it; null where it came with the set-up */
    by: z.string().nullable(),
  }),
);
/** line by line as it stands in the terms; all prices are whole pence with VAT */
const pricedSchema = {
  newPence: z.int(),
  lifeYears: z.number(),
  leastShare: z.number(),
  since: sinceSchema,
};

export const firmPricesSchema = named(
  "FirmPrices",
  z.object({
    /** the version of the hire terms that was written last, whatever its day: what a save is based on */
    newest: z.string(),
    /** the version that holds today; null where there are no hire terms yet */
    today: z.object({ versionId: idSchema, termsId: z.string(), validFrom: dateSchema }).nullable(),
    /** the lists that were written last, and their day; null where there are no hire terms yet */
    written: z.object({ validFrom: dateSchema, kit: kitSchema, damage: z.array(repairSchema) }).nullable(),
    kit: z.array(z.object({ id: z.string(), ...pricedSchema })),
    repairs: z.array(
      z.object({
        of: z.string(),
        kind: z.enum(["scratch", "dent", "tear", "stain", "crack", "missing"]),
        upToMm: z.int().optional(),
        pence: z.int(),
        part: z.enum(["repair", "replace"]),
        lifeYears: z.number(),
        leastShare: z.number(),
        since: sinceSchema,
      }),
    ),
    /** versions that hold from a later day on; those with the same lists have the same `like`, those of today 0 */
    later: z.array(z.object({ versionId: idSchema, validFrom: dateSchema, like: z.int() })),
    /** what the walk-rounds of the fleet count, and by which name it has a value; null: nobody has entered one */
    counted: z.array(
      z.object({
        checkId: z.string(),
        systemKind: z.string(),
        charge: z.string().nullable(),
        vehicles: z.int(),
        pricedBy: z.string().nullable(),
      }),
    ),
    /** kinds of system that are fitted to some vehicle */
    fitted: z.array(z.string()),
    /** the newest first */
    changes: z.array(
      z.object({
        versionId: idSchema,
        validFrom: dateSchema,
        writtenAt: instantSchema,
        by: z.string().nullable(),
        lines: z.array(
          z.object({
            list: z.enum(PRICE_LISTS),
            name: z.string(),
            kind: z.string().nullable(),
            upToMm: z.int().nullable(),
            /** null: no price */
            wasPence: z.int().nullable(),
            isPence: z.int().nullable(),
          }),
        ),
      }),
    ),
  }),
);

export const putFirmPricesSchema = named(
  "PutFirmPrices",
  z.strictObject({
    /** first day for whose quotes they hold; today or later */
    validFrom: dateSchema,
    kit: kitSchema,
    damage: z.array(repairSchema).max(1000),
  }),
);

export const byPriceList = z.object({ list: z.enum(PRICE_LISTS) });
export const readPriceListSchema = named(
  "ReadPriceList",
  z.strictObject({
    /** the bytes of the file in base64 */
    file: z.string(),
    /** said by a person, where it was asked */
    encoding: z.enum(ENCODINGS).optional(),
  }),
);
export const priceListAnswerSchema = named(
  "PriceListAnswer",
  z.object({
    /** a line that shows the letters, where only a person can say how the file is written */
    question: z.string().nullable(),
    /** columns that are not taken */
    ignored: z.array(z.string()),
    kit: kitSchema,
    repairs: z.array(repairSchema),
    rejected: z.array(
      z.object({ line: z.int(), column: z.string(), value: z.string(), expected: z.string() }),
    ),
  }),
);
