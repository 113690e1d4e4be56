import { client } from "../../api/client.ts";
import { Failure, take } from "../../api/failure.ts";
import { type HirePageData, hireChanged } from "./use-hire.ts";

interface Draft<T> {
  readonly base: T;
  readonly rebase: (next: T) => void;
}

const readHire = (id: string): Promise<HirePageData> =>
  take(client.GET("/api/hires/{id}", { params: { path: { id } } }));

/**
 * Sends a draft of a hire only where the server still has what the draft began from. Where somebody else changed it
 * meanwhile the page shows theirs, what was typed stays, and to keep it once more is then meant.
 * @throws Failure 409 `stale`
 */
export async function unlessChanged<T>(
  id: string,
  draft: Draft<T>,
  partOf: (page: HirePageData) => T,
  send: () => Promise<HirePageData>,
  read: (id: string) => Promise<HirePageData> = readHire,
): Promise<HirePageData> {
  const page = await read(id);
  const theirs = partOf(page);
  if (JSON.stringify(theirs) !== JSON.stringify(draft.base)) {
    draft.rebase(theirs);
    hireChanged(page);
    throw new Failure(409, "changedMeanwhile");
  }
  return send();
}
