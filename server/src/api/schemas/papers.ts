import * as z from "zod";
import { PAPERS } from "../../papers/papers.ts";
import { idSchema } from "./common.ts";

export const paperParams = z.object({ id: idSchema, paper: z.enum(PAPERS) });
/** What a hirer may fetch by the link of the hire. */
export const ownPaperParams = z.object({
  token: z.string().min(16).max(200),
  paper: z.enum(["condition", "statement", "agreement", "receipt"]),
});
