import type { NotApplicable } from "../contract.ts";

export const physics: NotApplicable = { notApplicable: "seats draw on no store" };
