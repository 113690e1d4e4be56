import type * as z from "zod/mini";
import type { SystemSpec } from "../contract.ts";
import { defineFields } from "../define-fields.ts";
import { acrossM, fromAbove, onWall } from "../draw.ts";
import { behindFrontAxle, quantity, side, usualBy } from "../fields.ts";

const { fields, schema } = defineFields({
  type: { type: "choice", options: ["absorption", "compressor"], source: "practice" },
  litres: quantity("L", 20, 250, "practice", 100),
  /** while the burner runs; 0 for a compressor fridge */
  gasGramsPerHour: usualBy(quantity("g/h", 0, 60, "practice", 18), "type", { compressor: 0 }),
  mainsW: usualBy(quantity("W", 0, 400, "practice", 135), "type", { compressor: 0 }),
  dcW: usualBy(quantity("W", 0, 300, "practice", 130), "type", { compressor: 45 }),
  behindFrontAxleM: behindFrontAxle(2.4),
  side: side("nearside"),
});

/** The fridge: absorption (230 V, 12 V while driving, gas) or compressor (12 V). */
export type FridgeSpec = z.infer<typeof schema>;

export const spec: SystemSpec<FridgeSpec> = {
  fields,
  schema,
  masses: () => [],
  parts: (fitted) => [
    fromAbove("fridge.fridge", "inside", fitted.behindFrontAxleM, acrossM(fitted.side, 0.7), [0.5, 0.5]),
    ...(fitted.type === "absorption"
      ? [onWall("fridge.vents", fitted.side, fitted.behindFrontAxleM, 1.3, [0.45, 0.3])]
      : []),
  ],
};
