import type { BucketAccess, MovedPhotographs } from "@setfair/server";
import { bucketOf, toldPlainly } from "../photograph-store.ts";
import { InputError, UsageError } from "../usage-error.ts";
import type { Verb } from "../verb.ts";
import { WORDS } from "../words.ts";
import { dataFolder } from "./serve.ts";

/**
 * `setfair move --to <PostgreSQL address> [--data <data folder>]`: from the embedded database into an empty one, and
 * photographs from the data folder into the store that SETFAIR_FILES_URL names; either, or both.
 */
export const moveVerb: Verb = {
  options: { data: { type: "string" }, to: { type: "string" }, json: { type: "boolean" } },
  maxPositionals: 0,
  run: async ({ io, flags }) => {
    // an address with a password is better given by the environment
    const url = typeof flags.to === "string" ? flags.to : io.env.SETFAIR_DATABASE_URL;
    const bucket = await bucketOf(io);
    if (!url && bucket === null) throw new UsageError(WORDS.t("cli.move.missing"));
    if (url && !/^postgres(ql)?:\/\//.test(url)) throw new InputError(WORDS.t("cli.move.notPostgres"));
    const folder = dataFolder(flags.data, io);
    // photographs first: a database that names them is of no use without
    const photographs = bucket === null ? null : await copyPhotographs(folder, bucket);
    const database = url ? await copyDatabase(folder, url, io.env.SETFAIR_KEY) : null;
    if (flags.json === true) io.out(`${JSON.stringify(answerOf(database, photographs), null, 2)}\n`);
    else io.out(`${[...photographLines(photographs), ...databaseLines(database, photographs)].join("\n")}\n`);
    return (database?.ok ?? true) && (photographs?.damaged.length ?? 0) === 0 ? 0 : 1;
  },
};

type Database = Exclude<
  Awaited<ReturnType<typeof import("@setfair/server").moveToPostgres>>,
  { why: "noData" | "notEmpty" }
>;

async function copyPhotographs(folder: string, bucket: BucketAccess): Promise<MovedPhotographs> {
  const { movePhotographs } = await import("@setfair/server");
  return toldPlainly(movePhotographs(folder, bucket));
}

async function copyDatabase(folder: string, url: string, key: string | undefined): Promise<Database> {
  const { moveToPostgres } = await import("@setfair/server");
  const answer = await moveToPostgres({ dataFolder: folder, url, ...(key ? { key } : {}) }).catch(
    (error: Error) => {
      throw new InputError(WORDS.t("cli.move.failed", { why: error.message }), { cause: error });
    },
  );
  if (!answer.ok && answer.why !== "broken")
    throw new InputError(
      WORDS.t(answer.why === "noData" ? "cli.backup.noData" : "cli.move.notEmpty", { path: answer.path }),
    );
  return answer as Database;
}

const answerOf = (database: Database | null, photographs: MovedPhotographs | null): object => ({
  ...(database ?? { ok: true }),
  ...(photographs === null ? {} : { photographs }),
});

function photographLines(photographs: MovedPhotographs | null): readonly string[] {
  if (photographs === null) return [];
  const { copied, there, damaged } = photographs;
  return [
    WORDS.t("cli.photographs.moved", { copied, there }),
    ...damaged.map((path) => WORDS.t("cli.backup.damaged", { path })),
    WORDS.t("cli.photographs.next"),
  ];
}

function databaseLines(database: Database | null, photographs: MovedPhotographs | null): readonly string[] {
  if (database === null) return [];
  if (!database.ok) return [WORDS.t("cli.move.broken", { name: database.path })];
  const { tables, rows, depots } = database;
  return [
    WORDS.t("cli.move.done", { tables, rows }),
    ...depots.map(({ name, checked, head }) =>
      WORDS.t("cli.restore.depot", { name, checked, head: head ?? WORDS.t("cli.dash") }),
    ),
    WORDS.t(photographs === null ? "cli.move.next" : "cli.photographs.nextDatabase"),
  ];
}
