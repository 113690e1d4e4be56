import { type JsonObject, makeRecord } from "@setfair/records";
import { client } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { deviceId } from "../hire/handover/send-records.ts";
import { queries } from "../query-client.ts";

/** Keeps what was told on the telephone; it answers the hirer's own note of the same fault. */
export async function sendHelp(hireId: string, vehicleId: string | null, content: JsonObject): Promise<void> {
  const refs = { hireId, ...(vehicleId === null ? {} : { vehicleId }) };
  const deviceTime = new Date().toISOString();
  const record = makeRecord(
    {
      kind: "help",
      content,
      deviceId: deviceId(),
      deviceTime,
      refs,
      chain: `desk.${crypto.randomUUID()}`,
    },
    null,
  );
  await take(client.POST("/api/records", { body: { records: [{ ...record }] } }));
  for (const key of [["help", hireId], ["hire", hireId], ["today"], ["hires"]])
    void queries.invalidateQueries({ queryKey: key });
}
