import type { NotApplicable } from "../contract.ts";

export const physics: NotApplicable = {
  notApplicable: "ramps draw nothing, and jacks draw on the battery for a minute a day",
};
