import type { NotApplicable } from "../contract.ts";

export const physics: NotApplicable = {
  notApplicable: "a garage holds no store; what lies in it is in the load plan",
};
