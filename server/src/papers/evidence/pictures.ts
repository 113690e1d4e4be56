import type { Readable } from "node:stream";
import type { Words } from "@setfair/words";
import type { Content } from "pdfmake/interfaces";
import { removedText } from "../../desk/removed-text.ts";
import type { PhotographFiles, PhotographSize } from "../../files/types.ts";
import type { Removed, Store } from "../../store/types.ts";
import { quiet } from "../pieces.ts";

/** Gives a photograph as an address that a document takes, or when and why it was removed, or null where the depot does not have it. */
export type Pictures = (
  sha256: string,
  size: Exclude<PhotographSize, "original">,
) => Promise<string | Removed | null>;

async function bytesOf(stream: Readable): Promise<Buffer> {
  const chunks: Buffer[] = [];
  for await (const chunk of stream) chunks.push(chunk as Buffer);
  return Buffer.concat(chunks);
}

/** Photographs of one depot for its papers. */
export function picturesOf(files: PhotographFiles, store: Store): Pictures {
  return async (sha256, size) => {
    const removed = (await store.photographs.get(sha256))?.removed ?? null;
    if (removed !== null) return removed;
    const found = await files.open(store.scope, sha256, size);
    if (found === null) return null;
    return `data:image/jpeg;base64,${(await bytesOf(found.stream)).toString("base64")}`;
  };
}

export interface Shown {
  readonly sha256: string;
  readonly words: string;
}

interface Grid {
  readonly pictures: Pictures | undefined;
  readonly words: Words;
  readonly columns: 2 | 4;
}

const PAGE_WIDTH = 499;
const GAP = 8;

/** Photographs side by side, each with its words and the start of its hash; one that is not here is said so. */
export async function pictureGrid(shown: readonly Shown[], grid: Grid): Promise<Content[]> {
  const cells: Content[] = [];
  for (const each of shown) cells.push(await cell(each, grid));
  const { columns } = grid;
  const rows = Array.from({ length: Math.ceil(cells.length / columns) }, (_, k) =>
    cells.slice(k * columns, (k + 1) * columns),
  );
  return rows.map(
    (row): Content => ({
      unbreakable: true,
      columnGap: GAP,
      margin: [0, 4, 0, 4],
      columns: Array.from({ length: columns }, (_, k): Content => row[k] ?? { text: "" }),
    }),
  );
}

async function cell({ sha256, words: said }: Shown, { pictures, words, columns }: Grid): Promise<Content> {
  const width = Math.floor((PAGE_WIDTH - GAP * (columns - 1)) / columns);
  const found = (await pictures?.(sha256, columns === 2 ? "1600" : "320")) ?? null;
  const caption = quiet(words.t("proof.photograph", { what: said, hash: sha256.slice(0, 12) }));
  if (typeof found !== "string") {
    const why = found === null ? words.t("proof.photographNotHere") : removedText(found, words);
    return { stack: [quiet(why), caption] };
  }
  // the alternative text is taken up by the structure tree
  const alt = { alt: said };
  return {
    stack: [{ image: found, fit: [width, Math.round(width * 0.75)], ...alt }, caption],
  };
}
