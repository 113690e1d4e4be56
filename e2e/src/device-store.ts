import type { Page } from "playwright-core";

export interface OnDevice {
  readonly records: readonly {
    readonly id: string;
    readonly kind: string;
    readonly about: string;
    readonly state: string;
    /** hash that a photograph's record names */
    readonly sha256: string | null;
  }[];
  readonly photographs: readonly string[];
}

/** What the device of this page keeps, read past the application. */
export function readDevice(page: Page): Promise<OnDevice> {
  return page.evaluate(async () => {
    const whole = <T>(request: IDBRequest<T>): Promise<T> =>
      new Promise((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    interface Kept {
      readonly id: string;
      readonly state: string;
      readonly record: { readonly kind: string; readonly content: Readonly<Record<string, unknown>> };
    }
    const database = await whole(indexedDB.open("setfair-device"));
    const kept = (await whole(database.transaction("records").objectStore("records").getAll())) as Kept[];
    const pictures = await whole(database.transaction("photographs").objectStore("photographs").getAllKeys());
    database.close();
    return {
      records: kept.map(({ id, state, record: { kind, content } }) => ({
        id,
        state,
        kind,
        about: String(content.checkId ?? content.about ?? content.purpose ?? ""),
        sha256: kind === "photograph" ? String(content.sha256) : null,
      })),
      photographs: pictures.map(String),
    };
  });
}
