import type { NotApplicable } from "../contract.ts";

export const physics: NotApplicable = { notApplicable: "a door holds nothing and draws nothing" };
