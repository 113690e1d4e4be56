import { client, type Schemas } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { askedOf, type EnquiryDraft, newHireOf } from "./enquiry-draft.ts";

/** Kept to be quoted, booked at the price shown, or put on the waiting list. */
export type KeepHow = "quote" | "book" | "wait";

interface Kept {
  readonly page: Schemas["HirePage"];
  /** its own page is opened next */
  readonly went: boolean;
}

/**
 * Keeps an enquiry; booked at once it is quoted, accepted and booked in one step. Where that is refused the enquiry
 * is kept all the same, and its page says what stands in the way.
 */
export async function keepEnquiry(draft: EnquiryDraft, how: KeepHow): Promise<Kept> {
  const page = await take(client.POST("/api/hires", { body: newHireOf(draft) }));
  const { id } = page.hire;
  const path = { id };
  if (how === "book" && draft.vehicleId !== null) {
    const body = { vehicleId: draft.vehicleId, extras: askedOf(draft).extras };
    const booked = await take(
      client.POST("/api/hires/{id}/take", {
        params: { path, query: { basedOn: String(page.version) } },
        body,
      }),
    ).catch(() => page);
    return { page: booked, went: true };
  }
  if (how !== "wait") return { page, went: true };
  const body = { classes: [], flexDays: 0 };
  return {
    page: await take(
      client.PUT("/api/hires/{id}/waiting", {
        params: { path, query: { basedOn: String(page.versions.waiting) } },
        body,
      }),
    ),
    went: false,
  };
}
