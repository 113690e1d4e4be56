import type { NotApplicable } from "../contract.ts";

export const physics: NotApplicable = {
  notApplicable: "the roof acts through the body of the vehicle, not through a store",
};
