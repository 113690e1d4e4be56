import type * as z from "zod/mini";
import type { SystemSpec } from "../contract.ts";
import { defineFields } from "../define-fields.ts";
import { behindFrontAxle, count, flag, quantity } from "../fields.ts";

const { fields, schema } = defineFields({
  bikes: count(1, 5, "practice", 2),
  /** most that it may carry, its own mass included, as on its label */
  maxKg: quantity("kg", 20, 200, "practice", 60),
  massKg: quantity("kg", 3, 60, "practice", 18),
  /** its mass is already in the mass in running order or among the options of the description */
  massListed: flag("practice", true),
  behindFrontAxleM: behindFrontAxle(5.2),
});

/** A rack for bicycles behind the rear wall. */
export type BikeRackSpec = z.infer<typeof schema>;

export const spec: SystemSpec<BikeRackSpec> = {
  fields,
  schema,
  masses: (fitted) => [
    {
      name: "mass.bikeRack",
      massKg: fitted.massKg,
      behindFrontAxleM: fitted.behindFrontAxleM,
      inMiro: fitted.massListed,
      removable: true,
    },
  ],
  parts: (fitted) => [
    {
      part: "bikeRack.rack",
      name: "part.bikeRack.rack",
      view: "rear",
      shape: "box",
      xM: fitted.behindFrontAxleM,
      yM: 0,
      zM: 1.4,
      lengthM: 1.3,
      heightM: 0.7,
    },
  ],
};
