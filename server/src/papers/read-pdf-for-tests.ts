/** For tests only. */
import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";

/** The text of a PDF, page by page, as a reader without eyes would get it. */
export async function readPdf(bytes: Uint8Array): Promise<{ pages: string[]; tagged: boolean }> {
  const document = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;
  const pages: string[] = [];
  for (let k = 1; k <= document.numPages; k++) {
    const { items } = await (await document.getPage(k)).getTextContent();
    pages.push(items.map((item) => ("str" in item ? item.str : "")).join(" "));
  }
  const marks = await document.getMarkInfo();
  await document.loadingTask.destroy();
  return { pages, tagged: marks?.Marked === true };
}
