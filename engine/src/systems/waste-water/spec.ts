import type * as z from "zod/mini";
import type { SystemSpec } from "../contract.ts";
import { defineFields } from "../define-fields.ts";
import { acrossM, fromAbove } from "../draw.ts";
import { behindFrontAxle, flag, quantity, side } from "../fields.ts";

const { fields, schema } = defineFields({
  litres: quantity("L", 5, 400, "practice"),
  /** insulated and heated against frost */
  heated: flag("practice", false),
  /** of a heated tank: what its heater draws while it runs, and from where */
  heaterW: quantity("W", 0, 300, "practice", 45),
  heatedFrom: { type: "choice", options: ["battery", "mains"], default: "battery", source: "practice" },
  behindFrontAxleM: behindFrontAxle(3.3),
  side: side("offside"),
});

/** The waste-water tank and its drain. */
export type WasteWaterSpec = z.infer<typeof schema>;

export const spec: SystemSpec<WasteWaterSpec> = {
  fields,
  schema,
  // waste was fresh water before, and the load plan counts the water carried once
  masses: () => [],
  parts: (fitted) => [
    fromAbove(
      "wasteWater.drain",
      "underside",
      fitted.behindFrontAxleM + 0.3,
      acrossM(fitted.side, 0.6),
      [0.2, 0.2],
    ),
  ],
};
