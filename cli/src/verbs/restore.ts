import type { Erasure, RestoreAnswer } from "@setfair/server";
import * as z from "zod/mini";
import type { Io } from "../io.ts";
import { bucketOf, toldPlainly } from "../photograph-store.ts";
import { InputError, UsageError } from "../usage-error.ts";
import type { Call, Verb } from "../verb.ts";
import { WORDS } from "../words.ts";
import { dataFolder } from "./serve.ts";

const erasureSchema = z.object({
  firmId: z.string(),
  depotId: z.string(),
  kind: z.enum(["record", "customer", "licence", "photograph"]),
  targetId: z.string(),
  at: z.string(),
});

/** `setfair restore <backup> [--data <new folder>] [--key <file>] [--erasures <file>]`: exit 1 where the backup does not hold. */
export const restoreVerb: Verb = {
  options: {
    data: { type: "string" },
    key: { type: "string" },
    "without-key": { type: "boolean" },
    erasures: { type: "string" },
    json: { type: "boolean" },
  },
  maxPositionals: 1,
  run: async (call) => {
    const { io, flags, positionals } = call;
    const from = positionals[0];
    if (from === undefined) throw new UsageError(WORDS.t("cli.restore.missing"));
    const into = dataFolder(flags.data, io);
    const { restoreBackup } = await import("@setfair/server");
    const asked = {
      from,
      dataFolder: into,
      erasures: await erasuresOf(io, flags.erasures),
      key: await keyOf(call),
      withoutKey: flags["without-key"] === true,
      bucket: await bucketOf(io),
    };
    const answer = await toldPlainly(restoreBackup(asked));
    if (!answer.ok && answer.why !== "changed" && answer.why !== "broken")
      throw new InputError(WORDS.t(`cli.restore.${answer.why}`, { path: answer.paths[0] ?? "" }));
    const said = lines(answer, into, flags.erasures !== undefined);
    io.out(flags.json === true ? `${JSON.stringify(answer, null, 2)}\n` : `${said}\n`);
    return answer.ok ? 0 : 1;
  },
};

async function keyOf({ io, flags }: Call): Promise<string | undefined> {
  if (typeof flags.key === "string") return textOf(io, flags.key);
  return io.env.SETFAIR_KEY || undefined;
}

async function textOf(io: Io, file: string): Promise<string> {
  try {
    return new TextDecoder().decode(await io.readFile(file));
  } catch (error) {
    const why = error instanceof Error && "code" in error ? String(error.code) : String(error);
    throw new InputError(WORDS.t("cli.cannotRead", { file, why }));
  }
}

/** One a line, as the server writes them. */
async function erasuresOf(io: Io, file: Call["flags"][string]): Promise<readonly Erasure[]> {
  if (typeof file !== "string") return [];
  const lines = (await textOf(io, file)).split("\n");
  return lines.flatMap((text, k) => {
    if (text.trim() === "") return [];
    const parsed = erasureSchema.safeParse(jsonOf(text));
    if (!parsed.success) throw new InputError(WORDS.t("cli.restore.badList", { file, line: k + 1 }));
    return [parsed.data];
  });
}

function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return null;
  }
}

function lines(answer: RestoreAnswer, into: string, hasList: boolean): string {
  if (!answer.ok)
    return answer.paths
      .map((path) =>
        WORDS.t(answer.why === "changed" ? "cli.restore.changed" : "cli.restore.broken", { path }),
      )
      .join("\n");
  const { files, made, erased, depots, leftOut } = answer;
  return [
    WORDS.t("cli.restore.done", { files, made, into, erased }),
    ...(leftOut === 0 ? [] : [WORDS.t("cli.restore.leftOut", { count: leftOut })]),
    ...depots.map(({ name, checked, head }) =>
      WORDS.t("cli.restore.depot", { name, checked, head: head ?? WORDS.t("cli.dash") }),
    ),
    ...(hasList ? [] : [WORDS.t("cli.restore.noList")]),
  ].join("\n");
}
