import * as z from "zod";
import { PAPERS } from "../../papers/papers.ts";
import { idSchema } from "./common.ts";

export const paperParams = z.object({ id: idSchema, paper: z.enum(PAPERS) });
