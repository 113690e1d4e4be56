import type { DeviceDatabase, Turnaround } from "./database.ts";

/** Brings what is to be done to the vehicles that came back to this device; with no signal what it has stays. */
export async function fetchTurnarounds(db: DeviceDatabase, request: typeof fetch = fetch): Promise<void> {
  let answer: { readonly turnarounds: readonly Turnaround[] };
  try {
    const response = await request("/api/yard/turnarounds", { credentials: "same-origin" });
    if (!response.ok) return;
    answer = await response.json();
  } catch {
    return;
  }
  await db.transaction("rw", db.turnarounds, async () => {
    await db.turnarounds.clear();
    await db.turnarounds.bulkPut(answer.turnarounds.map((turnaround) => ({ id: turnaround.id, turnaround })));
  });
}
