import type { DeviceDatabase, Guide } from "./database.ts";

/** What the depot answered: the guide · gone: the link is no longer valid · noAnswer: no signal, or the server is ill */
export type GuideAnswer =
  | { readonly outcome: "fresh"; readonly guide: Guide }
  | { readonly outcome: "gone" | "noAnswer" };

/** What `early-guide.js` has asked for already; taken once. */
function early(): Promise<Response> | undefined {
  const page = globalThis as { setfairGuide?: Promise<Response> | undefined };
  const asked = page.setfairGuide;
  page.setfairGuide = undefined;
  return asked;
}

/** Asks the depot for the guide. Whether this phone can keep it is another question: see `keepGuide`. */
export async function fetchGuide(token: string, request: typeof fetch = fetch): Promise<GuideAnswer> {
  try {
    const address = `/api/guide/${encodeURIComponent(token)}`;
    const response = await (early() ?? request(address, { credentials: "same-origin" }));
    if ([401, 403, 404, 410].includes(response.status)) return { outcome: "gone" };
    if (!response.ok) return { outcome: "noAnswer" };
    return { outcome: "fresh", guide: (await response.json()) as Guide };
  } catch {
    return { outcome: "noAnswer" };
  }
}

/** Keeps the guide on this phone; false where it has no room, or the browser lets a page keep nothing. */
export async function keepGuide(db: DeviceDatabase, token: string, guide: Guide): Promise<boolean> {
  try {
    await db.guides.put({ token, guide, fetchedAt: new Date().toISOString() });
    return true;
  } catch (error) {
    console.warn("guide not kept", error);
    return false;
  }
}
