import type { Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { axeViolations } from "./browser.ts";
import { civilIn, openPart, typeDate } from "./desk-acts.ts";
import { ask, openDesk } from "./desk-screen.ts";
import type { RunningServer } from "./server.ts";

// The day that changes: another vehicle on the morning of a ferry, and a longer hire that would make the next one late.

const FIRST = "Orla Tidewater";
const NEXT = "Perry Nextdoor";

let server: RunningServer;
let desk: Page;
let errors: string[];

beforeAll(async () => {
  const opened = await openDesk();
  ({ server, desk, errors } = opened);
  return opened.close;
});

interface Asked {
  readonly hires?: readonly { readonly id: string; readonly from: string }[];
  readonly hire?: { readonly id: string; readonly from: string; readonly to: string };
  readonly vehicles?: readonly { readonly id: string; readonly possible: boolean }[];
}

const party = {
  travellers: [
    { id: "t1", kind: "adult" },
    { id: "t2", kind: "adult" },
  ],
  dogs: 0,
  experience: "first",
};

async function booked(name: string, from: string, to: string, vehicleId: string): Promise<string> {
  const customer = { name, telephone: "01632 960 321", email: "p@example.org" };
  const { hire } = await ask<Asked>(desk, "POST", "/hires", { customer, party, from, to, vehicleId });
  const id = hire?.id ?? "";
  await ask<Asked>(desk, "POST", `/hires/${id}/quote`, { accept: true });
  await ask<Asked>(desk, "POST", `/hires/${id}/book`);
  return id;
}

/** Vehicles that are free for two in these days. */
async function free(from: string, to: string): Promise<readonly string[]> {
  const { vehicles } = await ask<Asked>(desk, "POST", "/availability", { from, to, party });
  return (vehicles ?? []).filter(({ possible }) => possible).map(({ id }) => id);
}

/** The season is nearly full: what is booked and would begin in these days is cancelled. */
async function makeRoom(to: string): Promise<void> {
  const { hires } = await ask<Asked>(desk, "GET", "/hires?stage=booked&limit=100");
  for (const { id, from } of hires ?? [])
    if (from < to)
      await ask<Asked>(desk, "POST", `/hires/${id}/end`, { as: "cancelled", reason: "Room for a test" });
}

const sheet = () => desk.getByRole("dialog");
const opened = async (id: string, kind: string) => {
  await desk.goto(`${server.url}/hires/${id}`);
  await openPart(desk, "Change");
  await desk.getByRole("button", { name: new RegExp(`^${kind}`) }).click();
};

test("another vehicle on the morning of a ferry: all that hangs on the plate is shown before it is done", async () => {
  const [from, to] = [civilIn(2), civilIn(24 * 4)];
  await makeRoom(to);
  const vehicles = await free(from, to);
  expect(vehicles.length).toBeGreaterThan(1);
  const id = await booked(FIRST, from, to, vehicles[0] ?? "");
  const today = from.slice(0, 10);
  // as a swap at 10:00 with a ferry at 20:00, whatever the hour of the test
  const ferry = civilIn(10);
  await ask<Asked>(desk, "PUT", `/hires/${id}/abroad`, {
    through: ["FR"],
    crossings: [{ kind: "ferry", on: ferry.slice(0, 10), at: ferry.slice(11), zone: "Europe/London" }],
    noCrossing: false,
    papers: {
      certificate: { validFrom: today, validTo: `${Number(today.slice(0, 4)) + 1}${today.slice(4)}` },
    },
    kitAboard: ["vest", "triangle"],
    got: ["zone.fr"],
    overhang: false,
    plateShowsUk: true,
  });
  const tomorrow = civilIn(26).slice(0, 10);
  const pitch = {
    postAmperes: 10,
    freshWater: true,
    wasteDrain: true,
    cassettePoint: true,
    lpgExchange: false,
  };
  const place = { name: "A pitch, invented", country: "FR", latitudeDeg: 49.2, longitudeDeg: -0.4 };
  await ask<Asked>(desk, "PUT", `/hires/${id}/trip`, {
    depot: { name: "Depot", country: "GB", latitudeDeg: 50.8, longitudeDeg: -1.1 },
    depart: from,
    return: to,
    returnDrive: { distanceKm: 120, minutes: 120 },
    timeZone: "Europe/London",
    // over the water in the evening, there in the morning
    stops: [
      {
        place,
        arrive: `${tomorrow}T08:00`,
        leave: `${to.slice(0, 10)}T00:30`,
        drive: { distanceKm: 120, minutes: 120 },
        pitch,
        acts: ["plugIn"],
      },
    ],
    departWith: {},
    settings: {},
  });
  await opened(id, "Another vehicle");
  await sheet()
    .getByRole("button", { name: /Vehicle/ })
    .click();
  await desk.getByRole("option").first().click();
  await sheet().getByLabel("Why").fill("The heater does not start");
  await sheet().getByRole("button", { name: "Show what this does" }).click();
  await sheet()
    .getByText(/Change the ferry booking of .* length .* height/)
    .waitFor();
  await sheet()
    .getByText(/The crossing leaves .*: (9|10) hours from now/)
    .waitFor();
  const cannot = sheet().locator("section", { hasText: /Cannot be had before the crossing leaves/ });
  await cannot.getByText(/VE103\) or registration document|VE103\) for/).waitFor();
  await expect.poll(() => cannot.locator("li").count()).toBeGreaterThan(1);
  const can = sheet().locator("section", { hasText: /can be done before it/ });
  await can.getByText(/Sign the agreement/).waitFor();
  await can.getByText(/Tell the insurer/).waitFor();
  await sheet()
    .getByText(/VE103\) or registration document of/)
    .waitFor();
  await sheet()
    .getByText(/too late by the usual time/)
    .first()
    .waitFor();
  await sheet()
    .getByText(/Tell the insurer that/)
    .waitFor();
  expect(await axeViolations(desk)).toEqual([]);
  await desk.keyboard.press("Escape");
  await sheet().waitFor({ state: "detached" });
  expect(await ask<object>(desk, "GET", `/hires/${id}/changes`)).toMatchObject({ done: [] });
  await opened(id, "Another vehicle");
  await sheet()
    .getByRole("button", { name: /Vehicle/ })
    .click();
  await desk.getByRole("option").first().click();
  await sheet().getByLabel("Why").fill("The heater does not start");
  await sheet().getByRole("button", { name: "Show what this does" }).click();
  await sheet().getByRole("button", { name: "Make the change" }).click();
  await desk.getByRole("heading", { name: "Changes so far" }).waitFor();
  expect(await axeViolations(desk)).toEqual([]);
});

test("a longer hire that would make the next one late is refused, until the next one goes to another vehicle", async () => {
  const day = 24 * 40;
  const [from, to] = [civilIn(day), civilIn(day + 24 * 8)];
  const later = [civilIn(day + 24 * 8 + 5), civilIn(day + 24 * 16)] as const;
  const both = (await free(from, later[1]))[0] ?? "";
  const first = await booked(FIRST, from, to, both);
  const next = await booked(NEXT, later[0], later[1], both);
  await opened(first, "They want to stay longer");
  await typeDate(sheet(), "New return", civilIn(day + 24 * 9));
  await sheet().getByRole("button", { name: "Show what this does" }).click();
  await sheet().getByText("This cannot be done as asked.").waitFor();
  await sheet().getByText(NEXT).waitFor();
  expect(await axeViolations(desk)).toEqual([]);
  await sheet()
    .getByRole("button", { name: /^Move to/ })
    .first()
    .click();
  await sheet().getByRole("button", { name: "Make the change" }).click();
  await sheet().waitFor({ state: "detached" });
  expect((await ask<Asked>(desk, "GET", `/hires/${first}`)).hire?.to).toBe(civilIn(day + 24 * 9));
  expect(await ask<object>(desk, "GET", `/hires/${next}`)).not.toMatchObject({ vehicle: { id: both } });
  expect(errors).toEqual([]);
});
