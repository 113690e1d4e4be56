import { chargeOnEnding, type EndingCharge } from "@setfair/engine";
import type { OpenHire } from "../api/handlers/change-hire.ts";
import { type EndingDocument, toJson } from "./documents.ts";
import { freeze } from "./freeze.ts";
import { type HireData, partOf } from "./hire-data.ts";
import { moneyOfHire } from "./money-of-hire.ts";

/** What ending it today costs under the scale that was accepted; null where nothing was accepted. */
export function endingCharge(data: HireData): EndingCharge | null {
  const quote = partOf(data, "quote");
  const result = quote?.answer.result ?? null;
  if (result === null || quote?.acceptedAt == null) return null;
  return chargeOnEnding({
    cancellation: result.cancellation,
    totalPence: result.total.pence,
    paidPence: moneyOfHire(data).paid.pence,
    startsOn: data.from.slice(0, 10),
    endedOn: data.today,
  });
}

export const acceptedTermsId = (data: HireData): string | null =>
  partOf(data, "quote")?.answer.result?.termsId ?? null;

/** Keeps why it ended and the scale as it was applied; what a booked hire costs is frozen as shown. */
export async function keepEnding(
  hire: OpenHire,
  { as, code }: Pick<EndingDocument, "as" | "code">,
): Promise<void> {
  const { data } = hire;
  const charge = as === "lost" ? null : endingCharge(data);
  const termsId = acceptedTermsId(data);
  const ending: EndingDocument = { as, code, at: data.now, charge, termsId };
  await hire.putPart("ending", ending);
  if (charge === null) return;
  const termsVersion = partOf(data, "quote")?.termsVersionId ?? null;
  await freeze(hire.store, {
    hireId: data.row.id,
    room: "cancellation",
    by: hire.by,
    at: data.now,
    document: toJson({ ...ending, versions: { terms: termsVersion } }),
  });
}
