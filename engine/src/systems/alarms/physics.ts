import type { NotApplicable } from "../contract.ts";

export const physics: NotApplicable = { notApplicable: "alarms run on their own cells" };
