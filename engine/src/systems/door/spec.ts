import type * as z from "zod/mini";
import type { SystemSpec } from "../contract.ts";
import { defineFields } from "../define-fields.ts";
import { onWall } from "../draw.ts";
import { behindFrontAxle, flag, side } from "../fields.ts";

const { fields, schema } = defineFields({
  type: { type: "choice", options: ["hinged", "sliding"], default: "hinged", source: "practice" },
  flyScreen: flag("practice", true),
  /** holds an open door against the wind */
  stay: flag("practice", true),
  window: flag("practice", true),
  behindFrontAxleM: behindFrontAxle(2.2),
  side: side("nearside"),
});

/** The door of the living part, with its fly screen and stay. */
export type DoorSpec = z.infer<typeof schema>;

export const spec: SystemSpec<DoorSpec> = {
  fields,
  schema,
  masses: () => [],
  parts: (fitted) => [
    onWall("door.door", fitted.side, fitted.behindFrontAxleM, 1.4, [
      fitted.type === "sliding" ? 1.2 : 0.65,
      1.75,
    ]),
  ],
};
