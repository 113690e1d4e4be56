import type { NotApplicable } from "../contract.ts";

export const physics: NotApplicable = { notApplicable: "an awning draws on no store" };
