import type { NotApplicable } from "../contract.ts";

export const physics: NotApplicable = { notApplicable: "a bike rack draws on no store" };
