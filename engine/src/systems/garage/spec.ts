import type * as z from "zod/mini";
import type { SystemSpec } from "../contract.ts";
import { defineFields } from "../define-fields.ts";
import { acrossM, fromAbove, onWall } from "../draw.ts";
import { behindFrontAxle, count, flag, quantity, SIDES } from "../fields.ts";

const { fields, schema } = defineFields({
  /** most that may lie in it, as on its label */
  maxKg: quantity("kg", 20, 500, "practice", 150),
  tiePoints: count(0, 16, "practice", 4),
  doors: count(1, 2, "practice", 2),
  heated: flag("practice", false),
  /** along the vehicle */
  lengthM: quantity("m", 0.4, 2.5, "practice", 1),
  /** middle of the floor */
  behindFrontAxleM: behindFrontAxle(5.2),
});

/** The store room at the rear that opens from outside. */
export type GarageSpec = z.infer<typeof schema>;

export const spec: SystemSpec<GarageSpec> = {
  fields,
  schema,
  masses: () => [],
  parts: (fitted) => [
    fromAbove("garage.floor", "inside", fitted.behindFrontAxleM, acrossM("nearside", 0), [
      fitted.lengthM,
      1.9,
    ]),
    ...SIDES.slice(0, fitted.doors).map((side) =>
      onWall(
        side === "nearside" ? "garage.doorNearside" : "garage.doorOffside",
        side,
        fitted.behindFrontAxleM,
        0.95,
        [Math.min(fitted.lengthM, 0.9), 0.9],
      ),
    ),
  ],
};
