import * as z from "zod";
import type { Act } from "../../auth/roles.ts";
import * as s from "../schemas/index.ts";

/** Path parameters that many operations share. */
export const byId = z.object({ id: s.idSchema });
export const byPhoto = z.object({ sha256: s.hashSchema });
export const byToken = z.object({ token: z.string().min(16).max(200) });

/** What the sender read before they changed it: the save is refused where another is kept by now. */
export const basedOn = z.object({ basedOn: z.string().min(1).max(80).optional() });

/** Access for a signed-in person whose role may do this. */
export const may = (act: Act) => ({ act });
