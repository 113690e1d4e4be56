import { createHash } from "node:crypto";
import { BadInput } from "@setfair/engine";
import { hashJson, isErased, type RecordsExport } from "@setfair/records";
import * as z from "zod/mini";
import type { Io } from "./io.ts";
import { readJson } from "./read-json.ts";

const hash = z.string().check(z.regex(/^[0-9a-f]{64}$/));
/** Names of a pack lead nowhere else. */
const path = z.string().check(z.regex(/^(photographs\/)?[0-9A-Za-z-]+\.[a-z]{3,4}$/));
const removedSchema = z.looseObject({ sha256: hash, at: z.iso.datetime(), under: z.string() });
const manifestSchema = z.looseObject({
  files: z.array(z.looseObject({ path, sha256: hash })),
  photographsRemoved: z.optional(z.array(removedSchema)),
});
const settlementSchema = z.looseObject({
  frozen: z.array(z.looseObject({ room: z.string(), hash, document: z.unknown() })),
});

/** What of an unpacked dispute pack holds, beside its records. */
export interface PackAnswer {
  readonly ok: boolean;
  readonly files: number;
  readonly changed: readonly string[];
  readonly missing: readonly string[];
  /** photographs in the folder that no record names */
  readonly unnamed: readonly string[];
  /** photographs that a record names and that are here, unchanged */
  readonly photographs: number;
  /** hashes that a record names and that the pack does not hold */
  readonly absent: readonly string[];
  /** those of them that the depot says it removed, with the day and under what */
  readonly removed: readonly { readonly sha256: string; readonly at: string; readonly under: string }[];
  readonly frozen: {
    readonly held: number;
    readonly changed: readonly string[];
    /** results whose hash stands in a record, and so in the chain of receipts */
    readonly chained: number;
  };
}

const check = <T>(schema: z.ZodMiniType<T>, value: unknown, file: string): T => {
  const parsed = schema.safeParse(value);
  if (parsed.success) return parsed.data;
  throw new BadInput(
    parsed.error.issues.map((issue) => ({
      path: `${file}: ${issue.path.join(".")}`,
      expected: issue.message,
    })),
  );
};

/** Hashes of photographs that the records name; what was erased names none. */
function namedBy({ records }: RecordsExport): ReadonlySet<string> {
  const named = new Set<string>();
  for (const record of records) {
    if (isErased(record)) continue;
    const { sha256, photographs } = record.content;
    for (const one of [sha256, ...(Array.isArray(photographs) ? photographs : [])])
      if (typeof one === "string") named.add(one);
  }
  return named;
}

/** Hashes of frozen results that the records name. */
function frozenIn({ records }: RecordsExport): ReadonlySet<unknown> {
  const named = records.flatMap((record) => (isErased(record) || record.kind !== "frozen" ? [] : [record]));
  return new Set(named.map(({ content }) => (content.result as { readonly hash?: unknown } | null)?.hash));
}

/** Goes through the files of an unpacked pack: each must be what the list says, each photograph what a record names. */
export async function verifyPack(io: Io, folder: string, records: RecordsExport): Promise<PackAnswer> {
  const { files, photographsRemoved = [] } = check(
    manifestSchema,
    await readJson(io, `${folder}/manifest.json`),
    "manifest.json",
  );
  const { frozen } = check(
    settlementSchema,
    await readJson(io, `${folder}/settlement.json`),
    "settlement.json",
  );
  const named = namedBy(records);
  const changed: string[] = [];
  const missing: string[] = [];
  const unnamed: string[] = [];
  const held = new Set<string>();
  for (const file of files) {
    if (!(await io.isFile(`${folder}/${file.path}`))) {
      missing.push(file.path);
      continue;
    }
    const bytes = await io.readFile(`${folder}/${file.path}`);
    const found = createHash("sha256").update(bytes).digest("hex");
    const photograph = /^photographs\/(.*)\.jpg$/.exec(file.path)?.[1];
    if (found !== file.sha256 || (photograph !== undefined && photograph !== found)) changed.push(file.path);
    else if (photograph !== undefined) named.has(found) ? held.add(found) : unnamed.push(file.path);
  }
  const other = frozen.filter(({ document, hash: said }) => hashJson(document) !== said);
  return {
    ok: changed.length + missing.length + unnamed.length + other.length === 0,
    files: files.length,
    changed,
    missing,
    unnamed,
    photographs: held.size,
    absent: [...named].filter((one) => !held.has(one)),
    removed: photographsRemoved
      .filter(({ sha256 }) => named.has(sha256))
      .map(({ sha256, at, under }) => ({ sha256, at, under })),
    frozen: {
      held: frozen.length,
      changed: other.map(({ room }) => room),
      chained: frozen.filter(({ hash: said }) => frozenIn(records).has(said)).length,
    },
  };
}
