import { hashJson } from "@setfair/records";
import { figuresOf, USUAL_FIGURES } from "../../desk/depot-figures.ts";
import { asDocument, type DepotDocument, type DepotFigures, toJson } from "../../desk/documents.ts";
import { localOf } from "../../desk/local-time.ts";
import { unsentMessages } from "../../mail/plan-messages.ts";
import type { Store } from "../../store/types.ts";
import { refuseOtherBase } from "../based-on.ts";
import type { Handlers } from "../call.ts";
import { badField, Refusal } from "../refusal.ts";

const versionOf = (figures: DepotFigures): string => hashJson(toJson(figures));
const open = (figures: DepotFigures) => ({ ...figures, messageDays: { ...figures.messageDays } });

async function answer(store: Store, now: Date) {
  const { document, timeZone } = await store.depot.get();
  const figures = figuresOf(asDocument<DepotDocument>(document));
  const booked = await store.hires.list({ stages: ["booked"], order: "soonest", limit: 1 });
  const local = (instant: string) => localOf(instant, timeZone);
  const [next] = booked.rows;
  return {
    figures: open(figures),
    usual: open(USUAL_FIGURES),
    version: versionOf(figures),
    next: next === undefined ? null : { reference: next.number, from: local(next.from), to: local(next.to) },
    now: local(now.toISOString()),
    unsent: (await unsentMessages(store, now.toISOString())).map(({ since, days, ...each }) => ({
      ...each,
      since: local(since),
      days: [...days],
    })),
  };
}

/** A pack that comes after the short message would say less than it. */
function refuseOutOfOrder({ preHire, dayBefore }: DepotFigures["messageDays"]): void {
  if (dayBefore >= preHire)
    throw badField("messageDays.dayBefore", `expected fewer days than the pack before the hire, ${preHire}`);
}

export const depotFiguresHandlers = {
  readDepotFigures: ({ context, signed }) => answer(signed.store, context.now()),

  async putDepotFigures({ context, signed, query, body }) {
    const { store, account } = signed;
    refuseOutOfOrder(body.messageDays);
    await store.within(async (inner) => {
      const now = await inner.depot.get();
      const document = asDocument<DepotDocument>(now.document);
      const value = figuresOf(document);
      refuseOtherBase(query.basedOn, { path: "figures", version: versionOf(value), value }, body);
      const saved = await inner.depot.update(
        { document: toJson({ ...document, figures: body }) },
        now.version,
      );
      if (!saved.ok) throw new Refusal("stale");
      await inner.audit.add({ by: account.id, act: "depot.figures", about: now.id, document: toJson(body) });
    });
    return answer(store, context.now());
  },
} satisfies Partial<Handlers>;
