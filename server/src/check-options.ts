import { statSync } from "node:fs";

interface Settings {
  readonly port?: number;
  readonly dataDir?: string;
  readonly url?: string;
  readonly databaseUrl?: string;
  readonly weatherUrl?: string;
  readonly bounceFolder?: string;
}

/**
 * What a server is started with, looked at before anything is opened, so that a setting that cannot be used ends the
 * start with its name.
 * @throws where one cannot be used: a line that names the setting and what was expected
 */
export function checkOptions({ port, dataDir, url, databaseUrl, weatherUrl, bounceFolder }: Settings): void {
  const expect = (holds: boolean, setting: string, what: string) => {
    if (!holds) throw new Error(`${setting}: expected ${what}`);
  };
  expect(port === undefined || (port >= 0 && port <= 65_535), "--port", "a number from 0 to 65535");
  expect(
    dataDir === undefined || (dataDir.trim() !== "" && !dataDir.includes("\0")),
    "--data or SETFAIR_DATA",
    "the name of a folder",
  );
  expect(
    url === undefined || isAddress(url, "http:", "https:"),
    "--url or SETFAIR_URL",
    "an address such as https://hire.example.org",
  );
  expect(
    databaseUrl === undefined || isAddress(databaseUrl, "postgres:", "postgresql:"),
    "SETFAIR_DATABASE_URL",
    "an address such as postgres://setfair@127.0.0.1/setfair",
  );
  expect(
    weatherUrl === undefined || isAddress(weatherUrl, "http:", "https:"),
    "SETFAIR_WEATHER_URL",
    "an http address with {latitude} and {longitude} in it",
  );
  expect(
    bounceFolder === undefined || statSync(bounceFolder, { throwIfNoEntry: false })?.isDirectory() === true,
    "SETFAIR_BOUNCES",
    "a folder that is there, in the form of Maildir",
  );
}

const isAddress = (text: string, ...protocols: readonly string[]) =>
  URL.canParse(text) && protocols.includes(new URL(text).protocol);
