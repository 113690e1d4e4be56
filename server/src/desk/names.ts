import type { Store } from "../store/types.ts";

/** Names of the depot's people by account id; "hirer" and "system" stay as they are. */
export async function accountNames(store: Store): Promise<(id: string) => string> {
  const names = new Map((await store.accounts.list()).map(({ id, name }) => [id, name]));
  return (id) => names.get(id) ?? id;
}
