import type * as z from "zod/mini";
import type { SystemSpec } from "../contract.ts";
import { defineFields } from "../define-fields.ts";
import { acrossM, fromAbove, onWall } from "../draw.ts";
import { behindFrontAxle, count, quantity, side } from "../fields.ts";

const { fields, schema } = defineFields({
  litres: quantity("L", 8, 40, "practice", 17),
  flushLitres: quantity("L", 0.1, 2, "practice", 0.4),
  /** where the flush water comes from */
  flushFrom: { type: "choice", options: ["fresh", "own"], default: "fresh", source: "practice" },
  spareCassettes: count(0, 2, "practice", 0),
  behindFrontAxleM: behindFrontAxle(3.9),
  side: side("nearside"),
});

/** The toilet over a cassette that is emptied by hand. */
export type CassetteToiletSpec = z.infer<typeof schema>;

export const spec: SystemSpec<CassetteToiletSpec> = {
  fields,
  schema,
  masses: () => [],
  parts: (fitted) => [
    onWall("cassetteToilet.door", fitted.side, fitted.behindFrontAxleM, 0.75, [0.4, 0.4]),
    fromAbove(
      "cassetteToilet.bowl",
      "inside",
      fitted.behindFrontAxleM,
      acrossM(fitted.side, 0.6),
      [0.45, 0.4],
    ),
  ],
};
