import { DUE, look, OUT_AND_BACK, TURNAROUND } from "../checking.ts";
import type { Check, SystemChecks } from "../contract.ts";
import type { HeatingSpec } from "./spec.ts";

export const checks: SystemChecks<HeatingSpec> = {
  checks: (spec) => [
    ...sources(spec).map((source) =>
      look(`heating.run${source}`, TURNAROUND, "inside", { part: "heating.heater" }),
    ),
    ...(spec.source === "electric" ? [] : [flue(spec)]),
    look("heating.panel", OUT_AND_BACK, "inside", { part: "heating.heater" }),
    look("heating.service", DUE, "inside", { part: "heating.heater" }),
  ],
};

function flue(spec: HeatingSpec): Check {
  return look("heating.flue", OUT_AND_BACK, spec.side, {
    part: "heating.flue",
    photograph: true,
    charge: "damage",
  });
}

function sources(spec: HeatingSpec): readonly string[] {
  return {
    gas: ["Gas"],
    gasElectric: ["Gas", "Electric"],
    diesel: ["Diesel"],
    dieselElectric: ["Diesel", "Electric"],
    electric: ["Electric"],
  }[spec.source];
}
