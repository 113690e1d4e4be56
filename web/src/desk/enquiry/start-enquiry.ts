import { keepDraft, readDraft } from "../use-draft.ts";
import { EMPTY_ENQUIRY, type EnquiryDraft } from "./enquiry-draft.ts";

/** Common hours for keys out and keys back; practice, and changed on the form. */
const OUT = "14:00";
const BACK = "10:00";

/** Begins an enquiry, or gives one that was begun, these days and this vehicle; one day is a night. */
export function startEnquiry(vehicleId: string, firstDay: string, lastDay: string): void {
  const begun = readDraft<EnquiryDraft>("enquiry") ?? EMPTY_ENQUIRY;
  const next = new Date(Date.parse(`${firstDay}T00:00:00Z`) + 86_400_000).toISOString().slice(0, 10);
  const back = lastDay > firstDay ? lastDay : next;
  keepDraft("enquiry", { ...begun, vehicleId, from: `${firstDay}T${OUT}`, to: `${back}T${BACK}` });
}
