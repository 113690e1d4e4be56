import type * as z from "zod/mini";
import type { SystemSpec } from "../contract.ts";
import { defineFields } from "../define-fields.ts";
import { acrossM, fromAbove } from "../draw.ts";
import { behindFrontAxle, flag, side } from "../fields.ts";

const { fields, schema } = defineFields({
  /** one switch for all 12 V of the living part */
  masterSwitch: flag("practice", true),
  pumpSwitch: flag("practice", true),
  /** how the tanks are shown: by a few lamps, in per cent, or not at all */
  gauges: { type: "choice", options: ["none", "lamps", "percent"], default: "lamps", source: "practice" },
  showsCabBattery: flag("practice", true),
  behindFrontAxleM: behindFrontAxle(1.9),
  side: side("nearside"),
});

/** The 12 V control panel: master switch, pump switch, gauges, and the fuses by it. */
export type ControlPanelSpec = z.infer<typeof schema>;

export const spec: SystemSpec<ControlPanelSpec> = {
  fields,
  schema,
  masses: () => [],
  parts: (fitted) => [
    fromAbove(
      "controlPanel.panel",
      "inside",
      fitted.behindFrontAxleM,
      acrossM(fitted.side, 0.95),
      [0.3, 0.08],
    ),
  ],
};
