import type { KeptPhotograph } from "./database.ts";
import type { SendAnswer, Sender } from "./flush.ts";

type Fetch = typeof fetch;

/** Sends over HTTP: to `/api/records` and `/api/photos` as the signed-in person, or by the hirer's link. */
export function httpSender(request: Fetch = fetch): Sender {
  return {
    putPhotograph: (photograph, via) =>
      send(
        request,
        "PUT",
        photoPath(photograph, via),
        new Blob([photograph.bytes], { type: "image/jpeg" }),
        "image/jpeg",
      ),
    addRecords: (records, via) =>
      send(request, "POST", recordsPath(via), JSON.stringify({ records }), "application/json"),
  };
}

const tokenOf = (via: string): string | null => (via.startsWith("link:") ? via.slice(5) : null);

function recordsPath(via: string): string {
  const token = tokenOf(via);
  return token === null ? "/api/records" : `/api/guide/${encodeURIComponent(token)}/records`;
}

function photoPath({ sha256 }: KeptPhotograph, via: string): string {
  const token = tokenOf(via);
  return token === null
    ? `/api/photos/${sha256}`
    : `/api/guide/${encodeURIComponent(token)}/photos/${sha256}`;
}

async function send(
  request: Fetch,
  method: string,
  path: string,
  body: BodyInit,
  type: string,
): Promise<SendAnswer> {
  let response: Response;
  try {
    response = await request(path, {
      method,
      body,
      headers: { "content-type": type },
      credentials: "same-origin",
    });
  } catch {
    return { outcome: "later" };
  }
  if (response.ok) return { outcome: "taken" };
  // a link that is no longer valid answers 404: what was read stays here, it is not a bad record
  const shut = path.startsWith("/api/guide/") && (response.status === 404 || response.status === 410);
  if (response.status === 401 || response.status === 403 || shut) return { outcome: "signIn" };
  // too many, too slow, or the server is ill: it may take it another time
  if (response.status === 408 || response.status === 429 || response.status >= 500)
    return { outcome: "later" };
  return { outcome: "refused", problem: await reasonOf(response) };
}

async function reasonOf(response: Response): Promise<string> {
  try {
    const body = (await response.json()) as {
      error?: { message?: string; problems?: { path: string; expected: string }[] };
    };
    const problems = body.error?.problems?.map(({ path, expected }) => `${path}: ${expected}`).join("; ");
    return problems || body.error?.message || String(response.status);
  } catch {
    return String(response.status);
  }
}
