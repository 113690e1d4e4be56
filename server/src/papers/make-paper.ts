import type { Words } from "@setfair/words";
import { asDocument } from "../desk/documents.ts";
import type { HireData } from "../desk/hire-data.ts";
import type { Store } from "../store/types.ts";
import type { Pictures } from "./evidence/pictures.ts";
import { COMPOSE, type PaperName } from "./papers.ts";
import { renderPdf } from "./render-pdf.ts";

/** One paper of a hire as a PDF, from the hire as it stands. Refused with what is missing where it is not so far. */
export async function makePaper(
  store: Store,
  data: HireData,
  paper: PaperName,
  words: Words,
  pictures?: Pictures,
  withoutAddress = false,
): Promise<Buffer> {
  const { name } = await store.firm.get();
  const { telephone } = asDocument<{ telephone?: string }>(data.depot.document);
  const content = await COMPOSE[paper]({ data, store, words, firm: name, pictures, withoutAddress });
  return renderPdf(
    {
      title: words.t(`papers.title.${paper}`),
      from: telephone === undefined ? name : `${name}, ${telephone}`,
      reference: `${data.row.number}, ${words.dateText(data.now, "short")}`,
      content,
    },
    words,
  );
}
