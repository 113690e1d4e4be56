import type { NotApplicable } from "../contract.ts";

export const physics: NotApplicable = {
  notApplicable: "windows act through the body of the vehicle, not through a store",
};
