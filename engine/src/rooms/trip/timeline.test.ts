import { expect, test } from "vitest";
import { hoursBetween } from "../../base/time.ts";
import type { Trip } from "../situation.ts";
import { cutTimeline } from "./timeline.ts";

const DT_H = 0.25;
const trip = (depart: string, end: string, timeZone: string) =>
  ({
    timeZone,
    depart,
    return: end,
    returnDrive: { distanceKm: 0, minutes: 0 },
    depot: { name: "Depot", country: "GB", latitudeDeg: 54, longitudeDeg: -3, elevationM: 80 },
    stops: [],
    settings: {},
  }) as unknown as Trip;

test.each([
  ["forward in London", "2026-03-27T10:00", "2026-03-31T10:00", "Europe/London"],
  ["back in London", "2026-10-23T10:00", "2026-10-27T10:00", "Europe/London"],
  ["back in Paris", "2026-10-23T16:15", "2026-10-27T10:00", "Europe/Paris"],
  ["not at all", "2026-07-01T10:00", "2026-07-04T10:00", "Europe/London"],
])(
  "a civil time finds its step as the time zone's own rules do, where the clock goes %s",
  (_, depart, end, timeZone) => {
    const { steps, stepAt } = cutTimeline(trip(depart, end, timeZone), 2, DT_H);
    const month = depart.slice(0, 8);
    for (let day = Number(depart.slice(8, 10)); day <= Number(end.slice(8, 10)); day++)
      for (let quarter = 0; quarter < 96; quarter++) {
        const two = (value: number) => String(value).padStart(2, "0");
        const local = `${month}${two(day)}T${two(Math.floor(quarter / 4))}:${two((quarter % 4) * 15)}`;
        const wanted = Math.round(hoursBetween(depart, local, timeZone) / DT_H);
        expect(stepAt(local), local).toBe(Math.min(steps, Math.max(0, wanted)));
      }
  },
);
