import type { NotApplicable } from "../contract.ts";

export const physics: NotApplicable = { notApplicable: "beds draw on no store" };
