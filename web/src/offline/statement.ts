import type { components } from "../api/types.generated.ts";
import type { DeviceDatabase } from "./database.ts";

export type Statement = components["schemas"]["Statement"];

/** shown: the statement as it stands · none: not shown yet · gone: the link is no longer valid · noAnswer: no signal */
export type StatementAnswer =
  | { readonly outcome: "shown"; readonly statement: Statement }
  | { readonly outcome: "none" | "gone" | "noAnswer" };

export interface KeptStatement {
  readonly statement: Statement;
  /** instant */
  readonly fetchedAt: string;
}

/** Asks the depot for the statement of a hire. */
export async function fetchStatement(token: string, request: typeof fetch = fetch): Promise<StatementAnswer> {
  try {
    const response = await request(`/api/guide/${encodeURIComponent(token)}/statement`, {
      credentials: "same-origin",
    });
    if (response.ok) return { outcome: "shown", statement: (await response.json()) as Statement };
    if (response.status !== 404) return { outcome: "noAnswer" };
    const { error } = (await response.json()) as { error?: { code?: string } };
    return { outcome: error?.code === "linkUnusable" ? "gone" : "none" };
  } catch {
    return { outcome: "noAnswer" };
  }
}

const keyOf = (token: string): string => `statement.${token}`;

/** Keeps the statement on this phone; false where it has no room, or the browser lets a page keep nothing. */
export async function keepStatement(
  db: DeviceDatabase,
  token: string,
  statement: Statement,
): Promise<boolean> {
  try {
    const value: KeptStatement = { statement, fetchedAt: new Date().toISOString() };
    await db.settings.put({ key: keyOf(token), value });
    return true;
  } catch (error) {
    console.warn("statement not kept", error);
    return false;
  }
}

export async function keptStatement(db: DeviceDatabase, token: string): Promise<KeptStatement | null> {
  return ((await db.settings.get(keyOf(token)))?.value as KeptStatement | undefined) ?? null;
}
