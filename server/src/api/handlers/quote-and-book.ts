import type { Quote, RoomAnswer } from "@setfair/engine";
import { type QuoteDocument, toJson } from "../../desk/documents.ts";
import { readGates } from "../../desk/gates.ts";
import { partOf } from "../../desk/hire-data.ts";
import { quoteFor } from "../../desk/quote-hire.ts";
import { ENGINE_VERSION } from "../../desk/version.ts";
import type { Handlers } from "../call.ts";
import { Refusal } from "../refusal.ts";
import { changeHire, type OpenHire } from "./change-hire.ts";

/** Accepted: frozen as shown, with the versions that it rests on. */
async function acceptQuote(hire: OpenHire, quote: QuoteDocument): Promise<QuoteDocument> {
  const { answer } = quote;
  if (answer.result === null) throw new Refusal("refused", { findings: answer.findings });
  const frozen = await hire.store.frozen.add({
    hireId: hire.data.row.id,
    room: "quote",
    by: hire.by,
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

export const quoteHandlers = {
  quote: (call) =>
    changeHire(call, ["enquiry", "quote"], async (hire) => {
      const { extras, accept } = call.body;
      const answer: RoomAnswer<Quote | null> = quoteFor(hire.data, extras);
      if (answer.result === null) throw new Refusal("refused", { findings: answer.findings });
      const made: QuoteDocument = {
        at: hire.data.now,
        acceptedAt: null,
        termsVersionId: hire.data.terms?.version.versionId ?? "",
        extras,
        answer: { result: answer.result, findings: answer.findings },
        frozenId: null,
      };
      await hire.putPart("quote", accept ? await acceptQuote(hire, made) : made);
      if (hire.data.row.stage === "enquiry") await hire.update({ stage: "quote" });
      await hire.audit(accept ? "hire.quoteAccepted" : "hire.quoted", { pence: answer.result.total.pence });
    }),

  book: (call) =>
    changeHire(call, ["quote"], async (hire) => {
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
      await hire.update({ stage: "booked" });
      await hire.audit("hire.booked", { vehicleId: row.vehicleId });
    }),
} satisfies Partial<Handlers>;
