import type * as z from "zod/mini";
import type { SystemSpec } from "../contract.ts";
import { defineFields } from "../define-fields.ts";
import { fromAbove } from "../draw.ts";
import { behindFrontAxle, quantity } from "../fields.ts";

const { fields, schema } = defineFields({
  peakW: quantity("W", 10, 1500, "practice"),
  noctC: quantity("°C", 38, 60, "practice", 45),
  /** change of output for each kelvin of cell temperature above 25 °C */
  perKelvin: quantity("1/K", -0.006, 0, "practice", -0.004),
  /** controller, wiring and dirt together */
  efficiency: quantity("–", 0.3, 1, "practice", 0.85),
  behindFrontAxleM: behindFrontAxle(2.8),
});

/** A photovoltaic panel on the roof with its controller. */
export type SolarSpec = z.infer<typeof schema>;

export const spec: SystemSpec<SolarSpec> = {
  fields,
  schema,
  masses: () => [],
  parts: (fitted) => [fromAbove("solar.panel", "roof", fitted.behindFrontAxleM, 0, [1.2, 0.55])],
};
