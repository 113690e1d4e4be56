import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { civilIn } from "./desk-acts.ts";
import { ask } from "./desk-screen.ts";
import { root } from "./server.ts";

/** Nights between a vehicle's two hires of the busy day and their other ends: enough for every season. */
const NIGHTS = 7;
const TURN_OUT = ["14:00", "14:30", "15:00", "15:30", "16:00"] as const;
const FREE_OUT = ["09:00", "11:00"] as const;
const FIRST = [
  "Anselm",
  "Bettina",
  "Caspian",
  "Delphine",
  "Edda",
  "Farid",
  "Greta",
  "Hamish",
  "Imogen",
] as const;
const LAST = [
  "Applewhistle",
  "Brackenfold",
  "Cobblethwaite",
  "Dapplemere",
  "Elderwick",
  "Fennimore",
] as const;

const nameOf = (n: number) => `${FIRST[n % FIRST.length]} ${LAST[(n * 5 + 1) % LAST.length]}`;
const dayIn = (days: number) => civilIn(24 * days).slice(0, 10);

interface Wanted {
  readonly vehicleId: string;
  readonly from: string;
  readonly to: string;
}

/** Makes a depot's fullest day by the API, as the page that is signed in: so many out, so many back that morning. */
export async function makeBusyDay(
  page: Page,
  { out, back }: { readonly out: number; readonly back: number },
): Promise<string> {
  // the demo's own hires of the days around it would come on top
  const { hires } = await ask<Answer>(page, "GET", "/hires?stage=booked&limit=100");
  for (const { id } of hires ?? [])
    await ask(page, "POST", `/hires/${id}/end`, { as: "cancelled", reason: "Room for a full day" });
  const day = dayIn(NIGHTS + 1);
  const heron = JSON.parse(readFileSync(join(root, "examples", "pv2.json"), "utf8")) as object;
  const due = dayIn(700);
  const kinds = ["mot", "tax", "insurance", "lpgCheck", "habitation", "service", "tyres", "coAlarm"];
  const dueDates = (mot: string) => kinds.map((kind) => ({ kind, dueOn: kind === "mot" ? mot : due }));
  for (let n = 0; n < out; n++) {
    const id = `busy${n}`;
    const description = { ...heron, id, name: `Heron ${n + 2}`, registration: `ZZ${n + 30} INV` };
    const vehicle = { description, vehicleClass: "panelVan", maxDogs: 1 };
    await ask(page, "POST", "/vehicles", { ...vehicle, dueDates: dueDates(due) });
    const isTurn = n < back;
    const cameBack = `${day}T${n % 2 === 0 ? "09:30" : "10:00"}`;
    if (isTurn) await book(page, n, { vehicleId: id, from: civilIn(24), to: cameBack });
    const times = isTurn ? TURN_OUT : FREE_OUT;
    const goes = { from: `${day}T${times[n % times.length]}`, to: `${dayIn(2 * NIGHTS + 1)}T10:00` };
    await book(page, out + n, { vehicleId: id, ...goes });
    // found only after it was booked: the MOT is over in the middle of the hire
    if (n % 4 === 1)
      await ask(page, "PUT", `/vehicles/${id}`, { ...vehicle, dueDates: dueDates(dayIn(NIGHTS + 4)) });
  }
  return day;
}

interface Answer {
  readonly hire?: { readonly id: string };
  readonly hires?: readonly { readonly id: string }[];
}

async function book(page: Page, n: number, { vehicleId, from, to }: Wanted): Promise<void> {
  const customer = {
    name: nameOf(n),
    telephone: `01632 960${String(400 + n)}`,
    email: `busy${n}@example.org`,
  };
  const travellers = [1, 2].map((k) => ({ id: `t${k}`, kind: "adult" }));
  const party = { travellers, dogs: 0, experience: "first" };
  const { hire } = await ask<Answer>(page, "POST", "/hires", { customer, party, from, to, vehicleId });
  await ask(page, "POST", `/hires/${hire?.id}/quote`, { accept: true });
  await ask(page, "POST", `/hires/${hire?.id}/book`);
}
