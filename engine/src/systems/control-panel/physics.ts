import type { NotApplicable } from "../contract.ts";

export const physics: NotApplicable = { notApplicable: "what the panel draws is counted with the lights" };
