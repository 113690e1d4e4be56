import type { NotApplicable } from "../contract.ts";

export const physics: NotApplicable = {
  notApplicable: "the cab lives on the starter battery and the fuel, which have their own systems",
};
