import { createServer, type RequestListener, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { afterEach, describe, expect, it } from "vitest";
import { makeDepot } from "../api/depot-for-tests.ts";
import { openWeatherService } from "./http-weather-service.ts";
import type { WeatherService } from "./weather-service.ts";

let server: Server | null = null;
afterEach(() => {
  server?.closeAllConnections();
  server?.close();
  server = null;
});

/** A weather office of this machine. */
async function office(answer: RequestListener, timeOutMs = 2000): Promise<WeatherService> {
  server = createServer(answer);
  await new Promise<void>((resolve) => server?.listen(0, "127.0.0.1", resolve));
  const { port } = server.address() as AddressInfo;
  return openWeatherService({
    address: `http://127.0.0.1:${port}/compact?lat={latitude}&lon={longitude}&altitude={elevation}`,
    contact: "desk@example.org",
    credit: "Invented weather office, CC BY 4.0",
    timeOutMs,
  });
}
const loch = { latitudeDeg: 57.2, longitudeDeg: -3.83, elevationM: 230 };

/** Hourly for `hours` from an instant: cold nights, half the sky under cloud. */
function forecast(from: string, hours: number): string {
  const timeseries = Array.from({ length: hours }, (_, k) => ({
    time: new Date(Date.parse(from) + k * 3_600_000).toISOString(),
    data: {
      instant: {
        details: { air_temperature: -3 - 4 * Math.cos((k / 12) * Math.PI), cloud_area_fraction: 50 },
      },
    },
  }));
  return JSON.stringify({
    type: "Feature",
    properties: { meta: { units: { air_temperature: "celsius" } }, timeseries },
  });
}

describe("an open weather service", () => {
  it("is asked by place and says who asks", async () => {
    const asked: { url: string | undefined; agent: string | undefined }[] = [];
    const service = await office((request, response) => {
      asked.push({ url: request.url, agent: request.headers["user-agent"] });
      response.end(forecast("2026-12-01T00:00Z", 30));
    });
    const points = await service.forecastAt(loch);
    expect(points).toHaveLength(30);
    expect(points[0]).toEqual({ epochMs: Date.parse("2026-12-01T00:00Z"), airC: -7, cloudShare: 0.5 });
    expect(asked).toEqual([
      { url: "/compact?lat=57.2000&lon=-3.8300&altitude=230", agent: "setfair desk@example.org" },
    ]);
  });

  it("that never answers is given up after the time-out", async () => {
    const service = await office(() => undefined, 150);
    const before = performance.now();
    await expect(service.forecastAt(loch)).rejects.toMatchObject({ failure: "timeOut" });
    expect(performance.now() - before).toBeLessThan(1500);
  });

  it("that stops in the middle of its answer is given up too", async () => {
    const service = await office((_, response) => {
      response.write('{"properties":');
    }, 150);
    await expect(service.forecastAt(loch)).rejects.toMatchObject({ failure: "timeOut" });
  });

  it("is not followed elsewhere, and no answer of it is believed unread", async () => {
    const answers: [RequestListener, string][] = [
      [
        (request, response) =>
          request.url === "/elsewhere"
            ? response.end(forecast("2026-12-01T00:00Z", 3))
            : response.writeHead(302, { location: "/elsewhere" }).end(),
        "unreachable",
      ],
      [(_, response) => response.writeHead(503).end(), "refused"],
      [(_, response) => response.end("<html>"), "unreadable"],
      [(_, response) => response.end('{"properties":{}}'), "unreadable"],
      [
        (_, response) => response.end(forecast("2026-12-01T00:00Z", 3).replace("celsius", "fahrenheit")),
        "unreadable",
      ],
      [(_, response) => response.end(forecast("2026-12-01T00:00Z", 3).replace("-7", "700")), "unreadable"],
      [(_, response) => response.end(" ".repeat(2_100_000)), "tooLarge"],
    ];
    for (const [answer, failure] of answers) {
      const service = await office(answer);
      await expect(service.forecastAt(loch), failure).rejects.toMatchObject({ failure });
      server?.closeAllConnections();
      server?.close();
    }
  });

  it("says which setting is wrong", () => {
    const open = (address: string, contact: string) => () =>
      openWeatherService({ address, contact, credit: "x" });
    expect(open("http://127.0.0.1/forecast", "desk@example.org")).toThrow(/SETFAIR_WEATHER_URL/);
    expect(open("http://127.0.0.1/{latitude}/{longitude}", "")).toThrow(/SETFAIR_WEATHER_CONTACT/);
    expect(open("http://127.0.0.1/{latitude}/{longitude}", "a\r\nb")).toThrow(/SETFAIR_WEATHER_CONTACT/);
  });
});

describe("a forecast for a hire", () => {
  it("is off to begin with, fetched when a depot turned it on, and kept with the trip", async () => {
    const depot = await makeDepot("sqlite");
    try {
      const asked: string[] = [];
      const start = "2026-07-03";
      const made = await depot.call("desk", "POST", "/hires", {
        customer: { name: "Ada Example", email: "ada@example.org", telephone: "01632 960111" },
        party: { travellers: [{ id: "a", kind: "adult" }], dogs: 0, experience: "first" },
        from: "2026-07-03T14:00",
        to: "2026-07-06T10:00",
        vehicleId: "pv2",
      });
      const { id } = made.body.hire;
      await depot.call("desk", "PUT", `/hires/${id}/trip`, {
        depot: { name: "Depot", country: "GB", latitudeDeg: 54.4, longitudeDeg: -2.9 },
        depart: "2026-07-03T14:00",
        return: "2026-07-06T10:00",
        returnDrive: { distanceKm: 90, minutes: 100 },
        timeZone: "Europe/London",
        stops: [
          {
            place: { name: "By the loch", country: "GB", ...loch },
            arrive: "2026-07-03T18:00",
            leave: "2026-07-06T08:00",
            drive: { distanceKm: 90, minutes: 100 },
            pitch: {
              postAmperes: 0,
              freshWater: true,
              wasteDrain: true,
              cassettePoint: true,
              lpgExchange: false,
            },
            acts: [],
          },
        ],
        departWith: {},
        settings: {},
      });
      const service = await office((request, response) => {
        asked.push(request.url ?? "");
        response.end(forecast(`${start}T00:00Z`, 24 * 5));
      });
      const context = depot.context as { weather?: WeatherService | null };
      const fetchIt = () => depot.call("desk", "POST", `/hires/${id}/weather`, {});
      expect((await depot.call("desk", "GET", "/weather-service")).body).toEqual({
        credit: null,
        isOn: false,
      });
      context.weather = service;
      expect((await fetchIt()).status).toBe(409);
      expect(asked).toEqual([]);
      expect((await depot.call("desk", "PUT", "/weather-service", { isOn: true })).status).toBe(403);
      expect((await depot.call("manager", "PUT", "/weather-service", { isOn: true })).body).toEqual({
        credit: "Invented weather office, CC BY 4.0",
        isOn: true,
      });
      const { status, body } = await fetchIt();
      expect(status).toBe(200);
      expect(asked.length).toBeGreaterThan(0);
      expect(body.trip.weather).toMatchObject({ source: "Invented weather office, CC BY 4.0" });
      expect(body.trip.weather.days[0]).toMatchObject({ minC: -7, maxC: 1 });
      const { result } = (await depot.call("desk", "GET", `/hires/${id}/forecast`)).body;
      expect(result.notes.some(({ forecastDays }: { forecastDays: number }) => forecastDays > 0)).toBe(true);
    } finally {
      await depot.close();
    }
  });
});
