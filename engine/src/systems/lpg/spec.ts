import type * as z from "zod/mini";
import type { SystemSpec } from "../contract.ts";
import { defineFields } from "../define-fields.ts";
import { onWall } from "../draw.ts";
import { behindFrontAxle, count, flag, quantity, side } from "../fields.ts";

const { fields, schema } = defineFields({
  arrangement: { type: "choice", options: ["exchange", "refillable", "tank"], source: "practice" },
  fuel: { type: "choice", options: ["propane", "butane"], default: "propane", source: "practice" },
  cylinders: count(1, 4, "practice"),
  /** gas in one full cylinder; for a refillable one its 80 % fill */
  kgEach: quantity("kg", 1, 60, "practice"),
  tareKgEach: quantity("kg", 1, 60, "practice"),
  /** date on the hose; the hose and the regulator are renewed by age */
  hoseDate: { type: "date", source: "practice" },
  /** shuts the gas off in a collision */
  impactShutoff: flag("practice", false),
  /** changes over to the full cylinder by itself */
  automaticChangeOver: flag("practice", false),
  behindFrontAxleM: behindFrontAxle(4.4),
  side: side("offside"),
});

/** Bottled or tank gas: what feeds the heater, the fridge and the hob. */
export type LpgSpec = z.infer<typeof schema>;

export const spec: SystemSpec<LpgSpec> = {
  fields,
  schema,
  masses: (fitted) =>
    Array.from({ length: fitted.cylinders }, (_, index) => ({
      name: "mass.lpg.cylinder",
      massKg: fitted.kgEach + fitted.tareKgEach,
      behindFrontAxleM: fitted.behindFrontAxleM,
      // the usual basis holds one full cylinder; the vehicle's own `miroBasis.lpgCylinders` decides
      inMiro: index === 0,
      removable: fitted.arrangement === "exchange" && index > 0,
    })),
  parts: (fitted) => [
    onWall("lpg.locker", fitted.side, fitted.behindFrontAxleM, 0.85, [0.55, 0.65]),
    ...(fitted.arrangement === "exchange"
      ? []
      : [onWall("lpg.filler", fitted.side, fitted.behindFrontAxleM - 0.45, 0.7, [0.14, 0.14])]),
  ],
};
