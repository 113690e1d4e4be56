import { readSeries } from "./read-series.ts";
import { type WeatherPlace, type WeatherService, WeatherUnavailable } from "./weather-service.ts";

export interface WeatherOptions {
  /** address with {latitude}, {longitude} and, where wanted, {elevation} */
  readonly address: string;
  /** who asks: the open services want an address at which they can reach somebody */
  readonly contact: string;
  readonly credit: string;
  readonly timeOutMs?: number;
}

const TIME_OUT_MS = 8000;
const MOST_BYTES = 2_000_000;

/**
 * A weather service over HTTP. Asks only what it must (a place to four places of a degree), follows no redirect, and
 * gives up after the time-out. Throws where the address or the contact is not usable.
 */
export function openWeatherService(options: WeatherOptions): WeatherService {
  const { address, contact, credit, timeOutMs = TIME_OUT_MS } = options;
  if (!/^https?:\/\//.test(address) || !address.includes("{latitude}") || !address.includes("{longitude}"))
    throw new Error("SETFAIR_WEATHER_URL: expected an http address with {latitude} and {longitude} in it");
  // a line break in a header would be another header
  if (!/^[\x21-\x7e ]{3,200}$/.test(contact))
    throw new Error("SETFAIR_WEATHER_CONTACT: expected an address at which the service can reach you");
  return {
    credit,
    forecastAt: async (place) => {
      const answer = await ask(fill(address, place), contact, timeOutMs);
      return readSeries(answer);
    },
  };
}

function fill(address: string, { latitudeDeg, longitudeDeg, elevationM }: WeatherPlace): string {
  return address
    .replaceAll("{latitude}", latitudeDeg.toFixed(4))
    .replaceAll("{longitude}", longitudeDeg.toFixed(4))
    .replaceAll("{elevation}", String(Math.round(elevationM)));
}

async function ask(address: string, contact: string, timeOutMs: number): Promise<string> {
  try {
    const response = await fetch(address, {
      redirect: "error",
      signal: AbortSignal.timeout(timeOutMs),
      headers: { accept: "application/json", "user-agent": `setfair ${contact}` },
    });
    if (!response.ok) throw new WeatherUnavailable("refused");
    return await readBody(response);
  } catch (cause) {
    if (cause instanceof WeatherUnavailable) throw cause;
    const timedOut = cause instanceof Error && cause.name === "TimeoutError";
    throw new WeatherUnavailable(timedOut ? "timeOut" : "unreachable", { cause });
  }
}

async function readBody(response: Response): Promise<string> {
  const decoder = new TextDecoder();
  let text = "";
  let bytes = 0;
  for await (const chunk of response.body ?? []) {
    bytes += chunk.byteLength;
    if (bytes > MOST_BYTES) throw new WeatherUnavailable("tooLarge");
    text += decoder.decode(chunk, { stream: true });
  }
  return text + decoder.decode();
}
