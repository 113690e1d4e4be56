import { createHash } from "node:crypto";
import type { Readable } from "node:stream";
import { isErased, type LeftOut, type RecordsExport } from "@setfair/records";
import { hireExport } from "../desk/hire-export.ts";
import { entriesOfHire } from "../desk/settlement-entries.ts";
import type { PhotographFiles } from "../files/types.ts";
import type { Removed } from "../store/types.ts";
import { hashesOf, textOf } from "./evidence/kept-records.ts";
import { picturesOf } from "./evidence/pictures.ts";
import { makePaper } from "./make-paper.ts";
import type { PaperCall } from "./paper-call.ts";
import { type ZipEntry, zipStream } from "./zip-stream.ts";

type Call = Pick<PaperCall, "data" | "store" | "words"> & {
  readonly files: PhotographFiles;
};

interface Listed {
  readonly path: string;
  readonly sha256: string;
  readonly bytes: number;
}

/**
 * The dispute pack as a ZIP: the paper, the records with their receipts, every photograph as it was taken, what was
 * frozen, a list of all files with their hashes, and how a stranger checks it. `setfair verify` reads the folder.
 */
export async function disputePack(call: Call): Promise<Readable> {
  const { data, store, words, files } = call;
  // made first: where something is missing the answer is a clear no, not half an archive
  const paper = await makePaper(store, data, "dispute", words, picturesOf(files, store));
  const all = await hireExport(store, data.row.id);
  const entries = await entriesOfHire(store, data);
  const said = { frozen: data.frozen, settlementEntries: entries, payments: data.payments };
  return zipStream(packed(call, { paper, all, said }));
}

interface Made {
  readonly paper: Buffer;
  readonly all: RecordsExport & { readonly leftOut: LeftOut };
  readonly said: object;
}

async function* packed({ data, store, words, files }: Call, made: Made): AsyncGenerator<ZipEntry> {
  const modified = new Date(data.now);
  const listed: Listed[] = [];
  const whole = (path: string, bytes: Uint8Array): ZipEntry => {
    listed.push({ path, bytes: bytes.length, sha256: createHash("sha256").update(bytes).digest("hex") });
    return { path, modified, asIs: false, open: async () => oneOf(bytes) };
  };
  const asJson = (path: string, value: unknown) =>
    whole(path, Buffer.from(`${JSON.stringify(value, null, 1)}\n`));
  const { head } = made.all.leftOut;
  yield whole(
    "README.txt",
    Buffer.from(
      `${words.t("proof.readme", { reference: data.row.number, made: words.dateText(data.now, "fullTime"), head: head ?? "-" })}\n`,
    ),
  );
  yield whole("dispute.pdf", made.paper);
  yield asJson("records.json", made.all);
  yield asJson("settlement.json", made.said);
  const absent: string[] = [];
  const removed: (Removed & { readonly sha256: string })[] = [];
  for (const sha256 of photographsOf(made.all, data.row.id)) {
    const gone = (await store.photographs.get(sha256))?.removed ?? null;
    if (gone !== null) {
      removed.push({ sha256, ...gone });
      continue;
    }
    const found = await files.open(store.scope, sha256, "original");
    if (found === null) {
      absent.push(sha256);
      continue;
    }
    const path = `photographs/${sha256}.jpg`;
    // the file's name is its hash: it was checked when it was taken, and is checked again by whoever verifies
    listed.push({ path, bytes: found.bytes, sha256 });
    yield { path, modified, asIs: true, open: async () => found.stream };
  }
  yield asJson("manifest.json", {
    hire: data.row.number,
    hireId: data.row.id,
    made: data.now,
    head,
    files: listed,
    photographsAbsent: absent,
    photographsRemoved: removed,
  });
}

async function* oneOf(bytes: Uint8Array): AsyncGenerator<Uint8Array> {
  yield bytes;
}

/** Hashes of the photographs that records of this hire name, each once. */
function photographsOf({ records }: RecordsExport, hireId: string): readonly string[] {
  const named = records
    .filter((record) => !isErased(record) && record.refs.hireId === hireId)
    .flatMap((record) => (isErased(record) ? [] : [record.content]))
    .flatMap(({ sha256, photographs }) => [textOf(sha256), ...hashesOf(photographs)]);
  return [...new Set(named)].filter((hash) => /^[0-9a-f]{64}$/.test(hash));
}
