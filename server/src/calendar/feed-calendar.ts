import type { Words } from "@setfair/words";
import { Refusal } from "../api/refusal.ts";
import { asDocument, type VehicleDocument } from "../desk/documents.ts";
import { localOf } from "../desk/local-time.ts";
import { wordsFor } from "../papers/paper-call.ts";
import type { FeedRow } from "../store/message-types.ts";
import type { BlockRow, DepotRow, HireRow, HireStage, Store } from "../store/types.ts";
import { type CalendarEntry, writeCalendar } from "./write-calendar.ts";

const DAY_MS = 86_400_000;
const BACK_DAYS = 60;
const AHEAD_DAYS = 732;
/** Whatever holds a vehicle. */
const HOLDING: readonly HireStage[] = ["booked", "handedOver", "onHire", "returned", "settled", "closed"];
const GONE: readonly HireStage[] = ["lost", "cancelled", "noShow"];

interface FeedView {
  readonly depot: DepotRow;
  readonly words: Words;
  readonly names: ReadonlyMap<string, string>;
}

/** Names and plates of the vehicles, by id. */
async function vehicleNames(store: Store, ids: readonly string[]): Promise<ReadonlyMap<string, string>> {
  const versions = await store.vehicles.versionsOf([...new Set(ids)]);
  return new Map(
    versions.map(({ of, document }) => {
      const { name, registration } = asDocument<VehicleDocument>(document).description;
      return [of, `${name} ${registration}`];
    }),
  );
}

const nameOf = ({ names, words }: FeedView, vehicleId: string | null): string =>
  names.get(vehicleId ?? "") ?? words.t("calendar.noVehicle");

function hireEntry(view: FeedView, hire: HireRow, withNames: boolean): CalendarEntry {
  const { words } = view;
  return {
    uid: `hire-${hire.id}@setfair`,
    title: words.t("calendar.hire", {
      vehicle: nameOf(view, hire.vehicleId),
      who: withNames ? hire.customerName : hire.number,
    }),
    text: words.t("calendar.hireText", { number: hire.number, stage: words.say(`stage.${hire.stage}`) }),
    place: view.depot.name,
    from: hire.from,
    to: hire.to,
    allDay: false,
    cancelled: false,
    changedAt: hire.updatedAt,
  };
}

/** A period off the road; whole days where it runs from midnight to midnight. */
function blockEntry(view: FeedView, block: BlockRow): CalendarEntry {
  const [from, to] = [localOf(block.from, view.depot.timeZone), localOf(block.to, view.depot.timeZone)];
  const allDay = from.endsWith("T00:00") && to.endsWith("T00:00");
  return {
    uid: `block-${block.id}@setfair`,
    title: view.words.t("calendar.block", { vehicle: nameOf(view, block.vehicleId), kind: block.kind }),
    text: block.note,
    place: "",
    from: allDay ? from.slice(0, 10) : block.from,
    to: allDay ? to.slice(0, 10) : block.to,
    allDay,
    cancelled: false,
    changedAt: block.at,
  };
}

/** For the hirer: when to come for the keys and when to bring them back. */
function hirerEntries(view: FeedView, hire: HireRow): CalendarEntry[] {
  const cancelled = GONE.includes(hire.stage);
  const vehicle = nameOf(view, hire.vehicleId);
  const entry = (what: "keys" | "return", from: string, to: string): CalendarEntry => ({
    uid: `${what}-${hire.id}@setfair`,
    title: view.words.t("calendar.hirer", { what, vehicle }),
    text: view.words.t("calendar.hireNumber", { number: hire.number }),
    place: view.depot.name,
    from,
    to,
    allDay: false,
    cancelled,
    changedAt: hire.updatedAt,
  });
  const shift = (instant: string, minutes: number) =>
    new Date(Date.parse(instant) + minutes * 60_000).toISOString();
  return [entry("keys", hire.from, shift(hire.from, 60)), entry("return", shift(hire.to, -30), hire.to)];
}

async function diaryEntries(store: Store, feed: FeedRow, depot: DepotRow, words: Words, now: Date) {
  const around = (days: number) => new Date(now.getTime() + days * DAY_MS).toISOString();
  const [from, to] = [around(-BACK_DAYS), around(AHEAD_DAYS)];
  const only = feed.kind === "vehicle" ? feed.about : undefined;
  const hires = await store.hires.all({
    stages: HOLDING,
    touchesFrom: from,
    touchesTo: to,
    ...(only === undefined ? {} : { vehicleId: only }),
  });
  const blocks = await store.blocks.between(from, to, only === undefined ? undefined : [only]);
  const ids = [...hires.flatMap(({ vehicleId }) => vehicleId ?? []), ...blocks.map((each) => each.vehicleId)];
  const view = { depot, words, names: await vehicleNames(store, ids) };
  return [
    ...hires.map((hire) => hireEntry(view, hire, feed.withNames)),
    ...blocks.map((block) => blockEntry(view, block)),
  ];
}

/** The calendar that a link opens, as iCalendar. A hirer's ends with the hirer's link: 60 days after the return. */
export async function feedCalendar(store: Store, feed: FeedRow, now: Date): Promise<string> {
  const depot = await store.depot.get();
  const words = wordsFor({ depot });
  if (feed.kind !== "hire") {
    const entries = await diaryEntries(store, feed, depot, words, now);
    return writeCalendar(words.t("calendar.name", { kind: feed.kind, depot: depot.name }), entries);
  }
  const hire = await store.hires.get(feed.about);
  if (hire === null || Date.parse(hire.to) + BACK_DAYS * DAY_MS < now.getTime())
    throw new Refusal("linkUnusable");
  const names = await vehicleNames(store, hire.vehicleId === null ? [] : [hire.vehicleId]);
  return writeCalendar(
    words.t("calendar.name", { kind: feed.kind, depot: depot.name }),
    hirerEntries({ depot, words, names }, hire),
  );
}
