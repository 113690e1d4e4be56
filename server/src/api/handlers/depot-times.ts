import { hashJson } from "@setfair/records";
import { timesOf, USUAL_TIMES } from "../../desk/depot-times.ts";
import { asDocument, type DepotDocument, type DepotTimes, toJson } from "../../desk/documents.ts";
import type { Store } from "../../store/types.ts";
import { refuseOtherBase } from "../based-on.ts";
import type { Handlers } from "../call.ts";
import { Refusal } from "../refusal.ts";

const versionOf = (times: DepotTimes): string => hashJson(toJson(times));
const open = (times: DepotTimes) => ({
  ...times,
  demonstrationMinutes: { ...times.demonstrationMinutes },
  jobMinutes: { ...times.jobMinutes },
  leadHours: { ...times.leadHours },
});

async function answer(store: Store) {
  const times = timesOf(asDocument<DepotDocument>((await store.depot.get()).document));
  return { times: open(times), usual: open(USUAL_TIMES), version: versionOf(times) };
}

export const depotTimesHandlers = {
  readDepotTimes: ({ signed }) => answer(signed.store),

  async putDepotTimes({ signed, query, body }) {
    const { store, account } = signed;
    await store.within(async (inner) => {
      const now = await inner.depot.get();
      const document = asDocument<DepotDocument>(now.document);
      const value = timesOf(document);
      refuseOtherBase(query.basedOn, { path: "times", version: versionOf(value), value }, body);
      const saved = await inner.depot.update({ document: toJson({ ...document, times: body }) }, now.version);
      if (!saved.ok) throw new Refusal("stale");
      await inner.audit.add({ by: account.id, act: "depot.times", about: now.id, document: toJson(body) });
    });
    return answer(store);
  },
} satisfies Partial<Handlers>;
