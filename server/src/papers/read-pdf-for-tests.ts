/** For tests only. */
import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";

interface Node {
  readonly role?: string;
  readonly alt?: string;
  readonly children?: readonly Node[];
}

const rolesIn = (node: Node): string[] => [
  ...(node.role === undefined ? [] : [node.alt === undefined ? node.role : `${node.role}: ${node.alt}`]),
  ...(node.children ?? []).flatMap(rolesIn),
];

/** The text of a PDF, page by page, as a reader without eyes would get it, with the roles of its structure. */
export async function readPdf(
  bytes: Uint8Array,
): Promise<{ pages: string[]; tagged: boolean; roles: string[] }> {
  const document = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;
  const pages: string[] = [];
  const roles: string[] = [];
  for (let k = 1; k <= document.numPages; k++) {
    const page = await document.getPage(k);
    const { items } = await page.getTextContent();
    const structure = (await page.getStructTree()) as Node | null;
    if (structure !== null) roles.push(...rolesIn(structure));
    pages.push(items.map((item) => ("str" in item ? item.str : "")).join(" "));
  }
  const marks = await document.getMarkInfo();
  await document.loadingTask.destroy();
  return { pages, tagged: marks?.Marked === true && roles.includes("H1"), roles };
}
