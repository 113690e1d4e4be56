import type { BackupAnswer } from "@setfair/server";
import { bucketOf, toldPlainly } from "../photograph-store.ts";
import { InputError, UsageError } from "../usage-error.ts";
import type { Verb } from "../verb.ts";
import { WORDS } from "../words.ts";
import { dataFolder } from "./serve.ts";

const MEGABYTE = 1_000_000;

/** `setfair backup <new folder> [--data <data folder>]`: exit 1 where a photograph had to be left out. */
export const backupVerb: Verb = {
  options: { data: { type: "string" }, json: { type: "boolean" } },
  maxPositionals: 1,
  run: async ({ io, flags, positionals }) => {
    const into = positionals[0];
    if (into === undefined) throw new UsageError(WORDS.t("cli.backup.missing"));
    if (io.env.SETFAIR_DATABASE_URL) throw new InputError(WORDS.t("cli.backup.postgres"));
    const { makeBackup } = await import("@setfair/server");
    const bucket = await bucketOf(io);
    const answer = await toldPlainly(
      makeBackup({ dataFolder: dataFolder(flags.data, io), into, now: new Date(), bucket }),
    );
    if ("why" in answer) throw new InputError(WORDS.t(`cli.backup.${answer.why}`, { path: answer.path }));
    io.out(
      flags.json === true ? `${JSON.stringify({ ...answer, into }, null, 2)}\n` : `${lines(answer, into)}\n`,
    );
    return answer.ok ? 0 : 1;
  },
};

function lines(answer: Exclude<BackupAnswer, { why: string }>, into: string): string {
  const { files, photographs, bytes, damaged } = answer;
  return [
    WORDS.t("cli.backup.done", { files, photographs, megabytes: Math.ceil(bytes / MEGABYTE), into }),
    ...damaged.map((path) => WORDS.t("cli.backup.damaged", { path })),
    WORDS.t("cli.backup.apart"),
  ].join("\n");
}
