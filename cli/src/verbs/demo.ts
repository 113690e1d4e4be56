import { rm } from "node:fs/promises";
import { join } from "node:path";
import type { Database } from "@setfair/server";
import { openData } from "../open-data.ts";
import type { Verb } from "../verb.ts";
import { WORDS } from "../words.ts";
import { dataFolder, signInLines } from "./serve.ts";

/** What the store itself keeps in the data folder; photographs stay, each under its hash. */
const STORE_FILES = ["setfair.sqlite", "setfair.sqlite-wal", "setfair.sqlite-shm", "erasures.jsonl"] as const;

/** Whether the firm of this store is the invented one. */
async function holdsDemo(database: Database): Promise<boolean> {
  const depots = await database.system.depots();
  const firms = depots.map(({ firmId, id }) => database.storeFor({ firmId, depotId: id }).firm.get());
  return (await Promise.all(firms)).every(({ document }) => document.demo === true);
}

/**
 * `setfair demo`: loads the invented firm into an empty data folder and prints its sign-ins; exit 1 where a
 * firm is there. With `--reset` an invented firm that is there goes first; any other firm is left as it is.
 */
export const demoVerb: Verb = {
  options: { data: { type: "string" }, reset: { type: "boolean" } },
  maxPositionals: 0,
  run: async ({ io, flags }) => {
    const data = dataFolder(flags.data, io);
    const [{ openFiles }, { loadDemo }] = await Promise.all([
      import("@setfair/server"),
      import("@setfair/demo"),
    ]);
    const open = () => openData(data, io);
    let database = await open();
    const refuse = (id: "cli.demo.notEmpty" | "cli.demo.notDemo" | "cli.demo.noReset"): 1 => {
      io.err(`${WORDS.t(id, { data })}\n`);
      return 1;
    };
    try {
      if ((await database.system.firmCount()) > 0) {
        if (flags.reset !== true) return refuse("cli.demo.notEmpty");
        if (!(await holdsDemo(database))) return refuse("cli.demo.notDemo");
        if (database.kind !== "sqlite") return refuse("cli.demo.noReset");
        await database.close();
        for (const name of STORE_FILES) await rm(join(data, name), { force: true });
        database = await open();
      }
      const signIns = await loadDemo(database, new Date(), openFiles({ dataFolder: data }));
      io.out(`${[WORDS.t("cli.demo.loaded", { data }), ...signInLines(signIns)].join("\n")}\n`);
      return 0;
    } finally {
      await database.close();
    }
  },
};
