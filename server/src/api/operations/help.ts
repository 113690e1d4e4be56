import { operation } from "../operation.ts";
import * as s from "../schemas/index.ts";
import { byId, may } from "./shared.ts";

export const helpOperations = {
  readHelp: operation({
    method: "GET",
    url: "/hires/:id/help",
    tag: "hires",
    summary:
      "For a hirer on the telephone: what can fail on this vehicle, what its stores hold, what was tried",
    access: may("hire.see"),
    params: byId,
    answer: s.helpSchema,
  }),
} as const;
