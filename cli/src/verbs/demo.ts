import type { Verb } from "../verb.ts";
import { WORDS } from "../words.ts";
import { dataFolder, signInLines } from "./serve.ts";

/** `setfair demo`: loads the invented firm into an empty data folder and prints its sign-ins; exit 1 where a firm is there. */
export const demoVerb: Verb = {
  options: { data: { type: "string" } },
  maxPositionals: 0,
  run: async ({ io, flags }) => {
    const data = dataFolder(flags.data, io);
    const [{ openDatabase }, { loadDemo }] = await Promise.all([
      import("@setfair/server"),
      import("@setfair/demo"),
    ]);
    const { SETFAIR_DATABASE_URL: url, SETFAIR_KEY: key } = io.env;
    const database = await openDatabase({
      dataFolder: data,
      ...(url ? { url } : {}),
      ...(key ? { key } : {}),
    });
    try {
      if ((await database.system.firmCount()) > 0) {
        io.err(`${WORDS.t("cli.demo.notEmpty", { data })}\n`);
        return 1;
      }
      const signIns = await loadDemo(database, new Date());
      io.out(`${[WORDS.t("cli.demo.loaded", { data }), ...signInLines(signIns)].join("\n")}\n`);
      return 0;
    } finally {
      await database.close();
    }
  },
};
