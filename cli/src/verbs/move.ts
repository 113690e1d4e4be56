import { InputError, UsageError } from "../usage-error.ts";
import type { Verb } from "../verb.ts";
import { WORDS } from "../words.ts";
import { dataFolder } from "./serve.ts";

/** `setfair move --to <PostgreSQL address> [--data <data folder>]`: from the embedded database into an empty one. */
export const moveVerb: Verb = {
  options: { data: { type: "string" }, to: { type: "string" }, json: { type: "boolean" } },
  maxPositionals: 0,
  run: async ({ io, flags }) => {
    // an address with a password is better given by the environment
    const url = typeof flags.to === "string" ? flags.to : io.env.SETFAIR_DATABASE_URL;
    if (!url) throw new UsageError(WORDS.t("cli.move.missing"));
    if (!/^postgres(ql)?:\/\//.test(url)) throw new InputError(WORDS.t("cli.move.notPostgres"));
    const { moveToPostgres } = await import("@setfair/server");
    const key = io.env.SETFAIR_KEY;
    const answer = await moveToPostgres({
      dataFolder: dataFolder(flags.data, io),
      url,
      ...(key ? { key } : {}),
    }).catch((error: Error) => {
      throw new InputError(WORDS.t("cli.move.failed", { why: error.message }), { cause: error });
    });
    if (!answer.ok && answer.why !== "broken")
      throw new InputError(
        WORDS.t(answer.why === "noData" ? "cli.backup.noData" : "cli.move.notEmpty", { path: answer.path }),
      );
    if (flags.json === true) io.out(`${JSON.stringify(answer, null, 2)}\n`);
    else if (!answer.ok) io.out(`${WORDS.t("cli.move.broken", { name: answer.path })}\n`);
    else {
      const { tables, rows, depots } = answer;
      const lines = [
        WORDS.t("cli.move.done", { tables, rows }),
        ...depots.map(({ name, checked, head }) =>
          WORDS.t("cli.restore.depot", { name, checked, head: head ?? WORDS.t("cli.dash") }),
        ),
        WORDS.t("cli.move.next"),
      ];
      io.out(`${lines.join("\n")}\n`);
    }
    return answer.ok ? 0 : 1;
  },
};
