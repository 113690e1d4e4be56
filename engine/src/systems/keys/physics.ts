import type { NotApplicable } from "../contract.ts";

export const physics: NotApplicable = { notApplicable: "keys draw on no store" };
