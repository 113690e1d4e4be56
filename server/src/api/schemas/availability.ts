import { partySchema } from "@setfair/engine";
import * as z from "zod";
import { figureSchema, findingSchema, idSchema, localSchema, moneySchema } from "./common.ts";
import { askedSchema } from "./hires.ts";
import { named } from "./named.ts";
import { stockShortSchema } from "./stock.ts";

// What could take a party on these days, and the nearest ways where nothing can.

export const availabilityQuerySchema = named(
  "AvailabilityQuery",
  z.strictObject({
    party: partySchema,
    from: localSchema,
    to: localSchema,
    asked: askedSchema.optional(),
  }),
);

const counterOfferSchema = named(
  "CounterOffer",
  z.object({
    vehicleId: idSchema,
    vehicleName: z.string(),
    /** all of them together */
    steps: z.array(
      z.discriminatedUnion("kind", [
        z.object({ kind: z.literal("shift"), from: localSchema, to: localSchema, hours: z.number() }),
        z.object({ kind: z.literal("otherCrossing") }),
        z.object({
          kind: z.literal("moveHire"),
          hireId: idSchema,
          reference: z.string(),
          customer: z.string(),
          /** where that hire would go */
          vehicleName: z.string(),
        }),
        z.object({ kind: z.literal("decideOnDogs"), dogs: z.int() }),
        z.object({ kind: z.literal("secondVehicle"), people: z.int(), vehicleName: z.string() }),
      ]),
    ),
    /** what it costs those concerned, by one table of practice */
    trouble: figureSchema,
  }),
);

export const availabilitySchema = named(
  "Availability",
  z.object({
    /** where none can take it as asked: the ways in which it could be taken all the same, the least trouble first */
    offers: z.array(counterOfferSchema).optional(),
    vehicles: z.array(
      z.object({
        id: idSchema,
        name: z.string(),
        registration: z.string(),
        possible: z.boolean(),
        findings: z.array(findingSchema),
        /** what would have to change for it to do */
        nearestChanges: z.array(
          z.object({
            kind: z.enum([
              "shift",
              "smallerParty",
              "renewDue",
              "waivePets",
              "otherLength",
              "fewerExtras",
              "otherVehicle",
            ]),
            from: localSchema.optional(),
            to: localSchema.optional(),
            shiftHours: z.number().optional(),
            people: z.number().optional(),
            /** of an extra of which there is not enough */
            extra: z.string().optional(),
            count: z.int().optional(),
            /** one that can do it as asked, the nearest in price */
            vehicleId: z.string().optional(),
            vehicleName: z.string().optional(),
          }),
        ),
        /** price as it would be quoted; null where it cannot be priced */
        price: moneySchema.nullable(),
      }),
    ),
    /** of which thing asked for there is not enough, who has the others and when one is back */
    short: stockShortSchema.optional(),
  }),
);
