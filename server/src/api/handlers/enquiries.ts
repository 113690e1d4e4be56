import { asDocument, type WaitingDocument } from "../../desk/documents.ts";
import { acceptedTermsId, endingCharge } from "../../desk/end-hire.ts";
import { enquiriesPage, waitingHires } from "../../desk/enquiries-page.ts";
import { partOf, readHireData } from "../../desk/hire-data.ts";
import { checkPeriod } from "../../desk/local-time.ts";
import { pageAfterChange } from "../../desk/page.ts";
import { requireStage } from "../../desk/require-stage.ts";
import type { JsonObject } from "../../store/types.ts";
import { refuseOtherBase } from "../based-on.ts";
import type { Handlers } from "../call.ts";
import { Refusal } from "../refusal.ts";
import { changeHire, openHire } from "./change-hire.ts";
import { chooseVehicle } from "./choose-vehicle.ts";
import { bookHire, makeQuote } from "./quote-and-book.ts";

const whatWouldDo = (waiting: JsonObject): unknown => {
  const { classes, flexDays } = asDocument<WaitingDocument>(waiting);
  return { classes, flexDays };
};

export const enquiryHandlers = {
  enquiries: ({ context, signed, query }) => enquiriesPage(signed.store, context.now(), query.part === "all"),

  putWaiting: (call) =>
    changeHire(call, ["enquiry", "quote"], async (hire) => {
      const { classes, flexDays } = call.body;
      await hire.refuseOtherBase("waiting", call.query.basedOn, call.body, whatWouldDo);
      const since = partOf(hire.data, "waiting")?.since ?? hire.data.now;
      await hire.putPart("waiting", { since, classes, flexDays });
      await hire.audit("hire.waits", { flexDays });
    }),

  dropWaiting: (call) =>
    changeHire(call, ["enquiry", "quote"], async (hire) => {
      const waiting = partOf(hire.data, "waiting");
      if (waiting === null || waiting.since === null) throw new Refusal("notFound");
      await hire.putPart("waiting", { ...waiting, since: null });
      await hire.audit("hire.waitsNoMore");
    }),

  /** All in one transaction: where somebody else was first, nothing of it stays. */
  async takeHire({ context, signed, params, query, body }) {
    const { store, account } = signed;
    const at = context.now();
    await store.within(async (inner) => {
      const read = () => readHireData(inner, params.id, at);
      const before = await read();
      requireStage(before, "enquiry", "quote");
      const { from = before.from, to = before.to } = body;
      const { vehicleId, version } = before.row;
      const now = { path: "hire", version, value: { vehicleId, from: before.from, to: before.to } };
      refuseOtherBase(query.basedOn, now, { vehicleId: body.vehicleId, from, to });
      const period = checkPeriod(from, to, before.depot.timeZone);
      const moved = await inner.hires.update(params.id, period, before.row.version);
      const row = await inner.hires.get(params.id);
      if (!moved.ok || row === null) throw new Refusal("stale");
      await chooseVehicle(inner, row, body.vehicleId, account.id, at);
      const chosen = await read();
      const extras = body.extras ?? partOf(chosen, "quote")?.extras ?? partOf(chosen, "asked")?.extras ?? [];
      await makeQuote(openHire(inner, chosen, account.id), { extras: [...extras], accept: true });
      await bookHire(openHire(inner, await read(), account.id));
    });
    return pageAfterChange(store, params.id, at, account.id);
  },

  async previewEnding({ context, signed, params }) {
    const data = await readHireData(signed.store, params.id, context.now());
    const waiting =
      data.row.vehicleId === null ? [] : await waitingHires(signed.store, data.depot, context.now());
    // whoever waits for days that this hire holds may be served once it is gone
    const next = waiting.filter(
      ({ from, to, hireId }) => hireId !== data.row.id && from < data.to && data.from < to,
    );
    return {
      charge: endingCharge(data),
      termsId: acceptedTermsId(data),
      nextInLine: next.map(({ hireId, reference, customer }) => ({ hireId, reference, customer })),
    };
  },
} satisfies Partial<Handlers>;
