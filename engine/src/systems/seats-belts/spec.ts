import type * as z from "zod/mini";
import type { SystemSpec } from "../contract.ts";
import { defineFields } from "../define-fields.ts";
import { fromAbove } from "../draw.ts";
import { behindFrontAxle, count, flag } from "../fields.ts";

const { fields, schema } = defineFields({
  beltedSeats: count(1, 9, "practice"),
  berths: count(0, 9, "practice"),
  isofixPlaces: count(0, 7, "practice", 0),
  /** hip point of the front row, metres behind the front axle */
  frontRowM: behindFrontAxle(0.5),
  rearRowM: behindFrontAxle(2),
  /** the cab seats turn round to face the living part */
  swivel: flag("practice", true),
  petsAllowed: flag("practice", false),
});

/** Seats for the road, each with its belt, and places to sleep: not the same number. */
export type SeatsBeltsSpec = z.infer<typeof schema>;

export const spec: SystemSpec<SeatsBeltsSpec> = {
  fields,
  schema,
  masses: () => [],
  parts: (fitted) => [
    fromAbove("seatsBelts.front", "cab", fitted.frontRowM, 0, [0.6, 1.5]),
    ...(fitted.beltedSeats > 2
      ? [fromAbove("seatsBelts.rear", "inside", fitted.rearRowM, 0.4, [0.6, 1])]
      : []),
  ],
};
