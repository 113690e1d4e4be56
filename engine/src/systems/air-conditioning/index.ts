import { defineSystem } from "../contract.ts";
import { briefing } from "./briefing.ts";
import { checks } from "./checks.ts";
import { faults } from "./faults.ts";
import { physics } from "./physics.ts";
import { spec } from "./spec.ts";

export const airConditioning = defineSystem({
  kind: "airConditioning",
  spec,
  physics,
  briefing,
  checks,
  faults,
});
