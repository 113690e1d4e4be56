import type { NotApplicable } from "../contract.ts";

export const physics: NotApplicable = { notApplicable: "the step draws on the battery for seconds only" };
