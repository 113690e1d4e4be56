import { client } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { sendOrRead } from "../meanwhile/use-guarded-draft.ts";
import { type HirePageData, hireChanged } from "./use-hire.ts";

/** Sends a part of a hire; where another was kept meanwhile, the hire is read again and shown as it is. */
export const keepPart = (id: string, send: () => Promise<HirePageData>): Promise<HirePageData> =>
  sendOrRead(send, async () =>
    hireChanged(await take(client.GET("/api/hires/{id}", { params: { path: { id } } }))),
  );
