import type { DeviceDatabase } from "./database.ts";

/** The id of this device: made once, kept for good. Says nothing about a person. */
export async function deviceId(db: DeviceDatabase): Promise<string> {
  return db.transaction("rw", db.settings, async () => {
    const kept = await db.settings.get("deviceId");
    if (typeof kept?.value === "string") return kept.value;
    const made = randomHex();
    await db.settings.put({ key: "deviceId", value: made });
    return made;
  });
}

/** 128 random bits; `crypto.randomUUID` is missing on pages that are not secure. */
function randomHex(): string {
  return Array.from(crypto.getRandomValues(new Uint8Array(16)), (byte) =>
    byte.toString(16).padStart(2, "0"),
  ).join("");
}

/** How well this device can hold on to what is not sent yet. */
export interface DeviceCare {
  /** false: the page came over a connection that browsers do not trust, so it cannot work offline */
  readonly secure: boolean;
  /** granted: kept until we delete it · refused: the browser may clear it · unknown: it cannot say */
  readonly storage: "granted" | "refused" | "unknown";
}

/** Asks the browser to keep our store; tells what it answered. */
export async function askToKeep(): Promise<DeviceCare> {
  const secure = globalThis.isSecureContext === true;
  if (!secure || navigator.storage?.persist === undefined) return { secure, storage: "unknown" };
  try {
    const granted = (await navigator.storage.persisted()) || (await navigator.storage.persist());
    return { secure, storage: granted ? "granted" : "refused" };
  } catch {
    return { secure, storage: "unknown" };
  }
}
