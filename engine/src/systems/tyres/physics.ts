import type { NotApplicable } from "../contract.ts";

export const physics: NotApplicable = { notApplicable: "tyres draw on no store" };
