import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { civilIn } from "./desk-acts.ts";
import { ask } from "./desk-screen.ts";
import { root } from "./server.ts";

export interface TripHire {
  /** each with a telephone number kept for drama */
  readonly customer: { readonly name: string; readonly email: string; readonly telephone: string };
  readonly adults: number;
  /** days from now until it leaves; it is back three days later */
  readonly inDays: number;
  /** current of the second pitch's post, A; left out: as the example of a trip has it */
  readonly postAmperes?: number;
}

/** A hire of three nights with the stops of the example of a trip: one off the post, then two on one. Answers its id. */
export async function makeHireWithTrip(
  desk: Page,
  { customer, adults, inDays, postAmperes }: TripHire,
): Promise<string> {
  const day = (days: number) => civilIn(24 * (inDays + days)).slice(0, 10);
  const [from, to] = [`${day(0)}T14:00`, `${day(3)}T10:00`];
  const { hire } = await ask<{ readonly hire: { readonly id: string } }>(desk, "POST", "/hires", {
    customer,
    party: {
      travellers: Array.from({ length: adults }, (_, k) => ({ id: `p${k}`, kind: "adult" })),
      dogs: 0,
      experience: "first",
    },
    from,
    to,
    vehicleId: "pv2",
  });
  const { trip } = JSON.parse(readFileSync(join(root, "examples/trip.input.json"), "utf8"));
  const [wild, , village] = trip.stops;
  const pitch = postAmperes === undefined ? village.pitch : { ...village.pitch, postAmperes };
  await ask(desk, "PUT", `/hires/${hire.id}/trip`, {
    ...trip,
    depart: from,
    return: to,
    stops: [
      { ...wild, arrive: `${day(0)}T18:00`, leave: `${day(1)}T10:00` },
      { ...village, arrive: `${day(1)}T15:00`, leave: `${day(3)}T07:00`, pitch },
    ],
  });
  return hire.id;
}
