import { BadInput } from "@setfair/engine";
import {
  type AnyRecord,
  type HeadAnswer,
  leftOutSchema,
  type Receipt,
  type RecordsExport,
  receiptSchema,
  verifyHead,
  verifyRecords,
} from "@setfair/records";
import * as z from "zod/mini";
import type { Io } from "../io.ts";
import { readJson } from "../read-json.ts";
import { InputError, UsageError } from "../usage-error.ts";
import type { Verb } from "../verb.ts";
import { type PackAnswer, verifyPack } from "../verify-pack.ts";
import { WORDS } from "../words.ts";

/** Records stay as they came: a changed one must be found broken, not refused by shape. */
const exportSchema = z.looseObject({
  records: z.array(z.looseObject({ id: z.string(), hash: z.string() })),
  receipts: z.array(receiptSchema),
  leftOut: z.optional(leftOutSchema),
});

/** `setfair verify <export file, -, unpacked dispute pack or data folder> [--head <hash>]`: exit 1 where something does not hold. */
export const verifyVerb: Verb = {
  options: { json: { type: "boolean" }, head: { type: "string" } },
  maxPositionals: 1,
  run: async ({ io, flags, positionals }) => {
    const from = positionals[0];
    if (from === undefined) throw new UsageError(WORDS.t("cli.missingFile"));
    const { depots, pack } = await readFrom(io, from);
    const head = typeof flags.head === "string" ? flags.head : null;
    const answers = depots.map(({ name, all }) => ({ depot: name, ...verifyOne(all, head) }));
    const records = answers.every((answer) => answer.records.ok);
    const ok =
      records &&
      pack?.ok !== false &&
      (head === null ? true : answers.some((answer) => answer.receipt !== null));
    io.out(
      flags.json === true
        ? `${JSON.stringify({ ok, depots: answers, ...(pack === null ? {} : { pack }) }, null, 2)}\n`
        : `${[...answers.map((each) => lines(each, head)), ...packLines(pack)].join("\n") || WORDS.t("cli.verify.noDepot")}\n`,
    );
    return ok ? 0 : 1;
  },
};

interface Depot {
  readonly name: string | null;
  readonly all: RecordsExport;
}

/** An export file, an unpacked dispute pack, or a data folder. */
async function readFrom(
  io: Io,
  from: string,
): Promise<{ readonly depots: readonly Depot[]; readonly pack: PackAnswer | null }> {
  if (!(await io.isFolder(from)))
    return { depots: [{ name: null, all: await readExport(io, from) }], pack: null };
  const folder = from.replace(/\/+$/, "");
  if (!(await io.isFile(`${folder}/manifest.json`)))
    return { depots: await readFolder(io, from), pack: null };
  const all = await readExport(io, `${folder}/records.json`);
  return { depots: [{ name: null, all }], pack: await verifyPack(io, folder, all) };
}

function packLines(pack: PackAnswer | null): readonly string[] {
  if (pack === null) return [];
  const { files, changed, missing, unnamed, photographs, absent, removed, frozen } = pack;
  const each = (what: string, paths: readonly string[]) =>
    paths.map((path) => WORDS.t("cli.verify.packFile", { what, path }));
  return [
    WORDS.t("cli.verify.pack", { files, changed: changed.length, missing: missing.length }),
    ...each("changed", changed),
    ...each("missing", missing),
    ...each("unnamed", unnamed),
    WORDS.t("cli.verify.photographs", { held: photographs, absent: absent.length }),
    ...(removed.length === 0 ? [] : [WORDS.t("cli.verify.removed", { count: removed.length })]),
    ...removed.map(({ sha256, at, under }) =>
      WORDS.t("cli.verify.removedLine", {
        sha256,
        why: WORDS.t("photograph.removed", { on: WORDS.dateText(at.slice(0, 10), "full"), under }),
      }),
    ),
    WORDS.t("cli.verify.frozen", {
      held: frozen.held,
      changed: frozen.changed.length,
      chained: frozen.chained,
    }),
  ];
}

function verifyOne(all: RecordsExport, head: string | null): HeadAnswer {
  if (head !== null) return verifyHead(all, head);
  const records = verifyRecords(all);
  return { ok: records.ok, records, receipt: null };
}

async function readExport(io: Io, file: string): Promise<RecordsExport> {
  const parsed = exportSchema.safeParse(await readJson(io, file));
  if (!parsed.success) {
    throw new BadInput(
      parsed.error.issues.map((issue) => ({ path: issue.path.join("."), expected: issue.message })),
    );
  }
  // the shape of the records is what verifyRecords is there to judge
  const { records, receipts, leftOut } = parsed.data;
  return {
    records: records as unknown as readonly AnyRecord[],
    receipts: receipts as readonly Receipt[],
    ...(leftOut === undefined ? {} : { leftOut }),
  };
}

async function readFolder(
  io: Io,
  folder: string,
): Promise<readonly { readonly name: string; readonly all: RecordsExport }[]> {
  const { SETFAIR_DATABASE_URL: url, SETFAIR_KEY: key } = io.env;
  // opening would make a store where there is none
  if (!url && !(await io.isFile(`${folder.replace(/\/+$/, "")}/setfair.sqlite`))) {
    throw new InputError(WORDS.t("cli.verify.noData", { folder }));
  }
  const { openDatabase } = await import("@setfair/server");
  const database = await openDatabase({
    dataFolder: folder,
    ...(url ? { url } : {}),
    ...(key ? { key } : {}),
  });
  try {
    const depots = await database.system.depots();
    return await Promise.all(
      depots.map(async ({ id, firmId, name }) => ({
        name,
        all: await database.storeFor({ firmId, depotId: id }).records.export(),
      })),
    );
  } finally {
    await database.close();
  }
}

function lines(
  { depot, records, receipt }: HeadAnswer & { readonly depot: string | null },
  head: string | null,
): string {
  const { ok, checked, erased, firstBroken, awaited, leftOut, gaps } = records;
  return [
    ...(depot === null ? [] : [WORDS.t("cli.verify.depot", { name: depot })]),
    ok
      ? WORDS.t("cli.verify.ok", { checked, erased, head: records.head ?? WORDS.t("cli.dash") })
      : WORDS.t("cli.verify.broken", {
          id: firstBroken!.id,
          why: WORDS.say(`cli.verify.why.${firstBroken!.why}`),
        }),
    ...(leftOut === 0 ? [] : [WORDS.t("cli.verify.leftOut", { count: leftOut })]),
    ...(gaps === 0 ? [] : [WORDS.t("cli.verify.gaps", { count: gaps })]),
    ...(awaited.length === 0
      ? []
      : [WORDS.t("cli.verify.awaited", { count: awaited.length, ids: awaited.join(", ") })]),
    ...(head === null
      ? []
      : [
          receipt === null
            ? WORDS.t("cli.verify.headMissing")
            : WORDS.t("cli.verify.headFound", { seq: receipt.seq, at: receipt.at }),
        ]),
  ].join("\n");
}
