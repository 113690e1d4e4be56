import type { NotApplicable } from "../contract.ts";

export const physics: NotApplicable = {
  notApplicable: "what it draws is counted with the lights, as otherW",
};
