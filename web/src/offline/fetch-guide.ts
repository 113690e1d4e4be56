import type { DeviceDatabase, Guide } from "./database.ts";

/** fresh · kept: no signal, what this phone has · gone: the link is no longer valid */
export type GuideAnswer = "fresh" | "kept" | "gone";

/** What `early-guide.js` has asked for already; taken once. */
function early(): Promise<Response> | undefined {
  const page = globalThis as { setfairGuide?: Promise<Response> | undefined };
  const asked = page.setfairGuide;
  page.setfairGuide = undefined;
  return asked;
}

/** Brings the guide to this phone, once; afterwards it is read from here. `arrived` has it before it is kept. */
export async function fetchGuide(
  db: DeviceDatabase,
  token: string,
  request: typeof fetch = fetch,
  arrived: (guide: Guide) => void = () => undefined,
): Promise<GuideAnswer> {
  try {
    const address = `/api/guide/${encodeURIComponent(token)}`;
    const response = await (early() ?? request(address, { credentials: "same-origin" }));
    if ([401, 403, 404, 410].includes(response.status)) return "gone";
    if (!response.ok) return "kept";
    const guide = (await response.json()) as Guide;
    arrived(guide);
    await db.guides.put({ token, guide, fetchedAt: new Date().toISOString() });
    return "fresh";
  } catch {
    return "kept";
  }
}
