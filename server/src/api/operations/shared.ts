import * as z from "zod";
import type { Act } from "../../auth/roles.ts";
import * as s from "../schemas/index.ts";

/** Path parameters that many operations share. */
export const byId = z.object({ id: s.idSchema });
export const byPhoto = z.object({ sha256: s.hashSchema });
export const byToken = z.object({ token: z.string().min(16).max(200) });

/** Access for a signed-in person whose role may do this. */
export const may = (act: Act) => ({ act });
