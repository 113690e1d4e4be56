import type { Quote, RoomAnswer } from "@setfair/engine";
import { asDocument, type QuoteDocument, toJson } from "../../desk/documents.ts";
import { freeze } from "../../desk/freeze.ts";
import { readGates } from "../../desk/gates.ts";
import { partOf } from "../../desk/hire-data.ts";
import { quoteFor } from "../../desk/quote-hire.ts";
import { holdStock, stockOfHire } from "../../desk/stock.ts";
import { ENGINE_VERSION } from "../../desk/version.ts";
import type { JsonObject } from "../../store/types.ts";
import type { Handlers } from "../call.ts";
import { Refusal } from "../refusal.ts";
import { changeHire, type OpenHire } from "./change-hire.ts";

/** Accepted: frozen as shown, with the versions that it rests on. */
async function acceptQuote(hire: OpenHire, quote: QuoteDocument): Promise<QuoteDocument> {
  const { answer } = quote;
  if (answer.result === null) throw new Refusal("refused", { findings: answer.findings });
  const frozen = await freeze(hire.store, {
    hireId: hire.data.row.id,
    room: "quote",
    by: hire.by,
    at: hire.data.now,
    document: toJson({
      answer,
      versions: {
        terms: quote.termsVersionId,
        vehicle: hire.data.vehicle?.version.versionId ?? null,
        rules: hire.data.ruleBook.id,
        engine: ENGINE_VERSION,
      },
    }),
  });
  return { ...quote, acceptedAt: hire.data.now, frozenId: frozen.id };
}

export interface QuoteWish {
  readonly extras: QuoteDocument["extras"];
  readonly accept: boolean;
  readonly discount?: NonNullable<QuoteDocument["discount"]>;
}

/** Prices the hire as asked, or refuses with every reason: the terms' and what is short on the shelf. */
export async function makeQuote(hire: OpenHire, { extras, accept, discount }: QuoteWish): Promise<void> {
  const given = discount === undefined ? undefined : withoutGiver(discount);
  const answer: RoomAnswer<Quote | null> = quoteFor(hire.data, extras, given);
  const shelf = await stockOfHire(hire.store, hire.data, extras);
  if (answer.result === null || shelf.findings.length > 0)
    throw new Refusal("refused", { findings: [...answer.findings, ...shelf.findings] });
  const made: QuoteDocument = {
    at: hire.data.now,
    acceptedAt: null,
    termsVersionId: hire.data.terms?.version.versionId ?? "",
    extras,
    ...(discount === undefined ? {} : { discount }),
    answer: { result: answer.result, findings: answer.findings },
    frozenId: null,
  };
  await hire.putPart("quote", accept ? await acceptQuote(hire, made) : made);
  if (hire.data.row.stage === "enquiry") await hire.update({ stage: "quote" });
  await hire.audit(accept ? "hire.quoteAccepted" : "hire.quoted", { pence: answer.result.total.pence });
  if (discount !== undefined) {
    const line = answer.result.lines.find(({ code }) => code === "discount");
    const { kind, reason } = discount;
    await hire.audit("hire.discounted", { kind, reason, pence: -(line?.amount.pence ?? 0) });
  }
}

const withoutGiver = ({ by: _, ...discount }: NonNullable<QuoteDocument["discount"]>) => discount;

/** Takes the vehicle and what travels with it, or neither. */
export async function bookHire(hire: OpenHire): Promise<void> {
  const { row, vehicle, depotDocument } = hire.data;
  const quote = partOf(hire.data, "quote");
  if (vehicle === null || row.vehicleId === null) {
    throw new Refusal("missing", { problems: [{ path: "vehicle", expected: "a vehicle on this hire" }] });
  }
  if (quote === null || quote.acceptedAt === null) {
    throw new Refusal("missing", {
      problems: [{ path: "quote", expected: "a quote that the customer accepted" }],
    });
  }
  const never = readGates(hire.data, null)
    .filter(({ gate }) => gate === "seats")
    .flatMap(({ findings }) =>
      findings.filter(
        ({ severity, basis }) => severity === "refuse" && (basis === "law" || basis === "safety"),
      ),
    );
  if (never.length > 0) throw new Refusal("refused", { findings: never });
  const booked = await hire.store.bookings.book({
    hireId: row.id,
    vehicleId: row.vehicleId,
    from: row.from,
    to: row.to,
    turnaroundMinutes: depotDocument.turnaroundMinutes,
  });
  if (!booked.ok)
    throw new Refusal("taken", {
      problems: [{ path: "vehicle", expected: "a vehicle that is free then" }],
    });
  await holdStock(hire.store, hire.data);
  const waiting = partOf(hire.data, "waiting");
  if (waiting !== null && waiting.since !== null) await hire.putPart("waiting", { ...waiting, since: null });
  await hire.update({ stage: "booked" });
  await hire.audit("hire.booked", { vehicleId: row.vehicleId });
}

/** What somebody asked for, out of a quote with its prices. */
const asWished = (quote: JsonObject): unknown => {
  const { extras, discount } = asDocument<QuoteDocument>(quote);
  if (discount === undefined || discount === null) return { extras };
  const { role: _, by: __, ...given } = discount;
  return { extras, discount: given };
};

export const quoteHandlers = {
  quote: (call) =>
    changeHire(call, ["enquiry", "quote"], async (hire) => {
      const { extras, accept, discount } = call.body;
      await hire.refuseOtherBase("quote", call.query.basedOn, { extras, discount }, asWished);
      const { role, id: by } = call.signed.account;
      return makeQuote(hire, {
        extras,
        accept,
        ...(discount === undefined ? {} : { discount: { ...discount, role, by } }),
      });
    }),

  book: (call) => changeHire(call, ["quote"], bookHire),
} satisfies Partial<Handlers>;
