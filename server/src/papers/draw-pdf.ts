import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { createWords } from "@setfair/words";
import pdfmake from "pdfmake";
import type { Content, TDocumentDefinitions } from "pdfmake/interfaces";
import { RULED } from "./pieces.ts";
import { FOOT_PT, writeStructure } from "./tag-structure.ts";

const folder = dirname(
  createRequire(import.meta.url).resolve("@expo-google-fonts/atkinson-hyperlegible-next/package.json"),
);
const font = (weight: string) => join(folder, weight, `AtkinsonHyperlegibleNext_${weight}.ttf`);
pdfmake.setFonts({
  hyperlegible: {
    normal: font("400Regular"),
    bold: font("700Bold"),
    italics: font("400Regular_Italic"),
    bolditalics: font("700Bold_Italic"),
  },
});
// named, since a layout is made of functions, which no paper can carry to another thread
pdfmake.addTableLayouts({
  [RULED]: {
    hLineWidth: () => 0.5,
    vLineWidth: () => 0,
    hLineColor: () => "#9aa5af",
    paddingLeft: () => 0,
    paddingTop: () => 4,
    paddingBottom: () => 3,
  },
});
writeStructure();
interface Policies {
  setUrlAccessPolicy(may: (address: string) => boolean): void;
  setLocalAccessPolicy(may: (path: string) => boolean): void;
}
// the published types lack both: a document takes nothing from outside but its own font files
const policies = pdfmake as typeof pdfmake & Policies;
policies.setUrlAccessPolicy(() => false);
policies.setLocalAccessPolicy((path: string) => path.startsWith(folder));

/** One document for a customer or the yard, before it is drawn: plain data, so that another thread can draw it. */
export interface Paper {
  readonly title: string;
  /** name of the firm, and how to reach it */
  readonly from: string;
  /** reference and date, for the foot of every page */
  readonly reference: string;
  readonly content: readonly Content[];
}

/** Draws a paper as a tagged PDF, A4, in the language of `locale`, with its page numbers. */
export async function drawPdf(paper: Paper, locale: string): Promise<Uint8Array> {
  const words = createWords(locale);
  const definition: TDocumentDefinitions = {
    pageSize: "A4",
    pageMargins: [48, 56, 48, FOOT_PT],
    // pdfmake hands both to its writer: structure tags and the language for a screen reader
    ...({ tagged: true, language: words.locale, displayTitle: true } as object),
    info: { title: paper.title, author: paper.from },
    defaultStyle: { font: "hyperlegible", fontSize: 10.5, lineHeight: 1.25 },
    styles: {
      title: { fontSize: 20, bold: true, margin: [0, 0, 0, 4] },
      heading: { fontSize: 13, bold: true, margin: [0, 14, 0, 4] },
      quiet: { color: "#4a5560", fontSize: 9.5 },
      strong: { bold: true },
    },
    footer: (page: number, pages: number) => ({
      margin: [48, 16, 48, 0],
      columns: [
        { text: `${paper.from} · ${paper.reference}`, style: "quiet" },
        {
          text: words.t("papers.page", { page, pages }),
          style: "quiet",
          alignment: "right",
          width: 90,
        },
      ],
    }),
    content: [
      { text: paper.title, style: "title" },
      { text: paper.from, style: "quiet", margin: [0, 0, 0, 10] },
      ...paper.content,
    ],
  };
  return pdfmake.createPdf(definition).getBuffer();
}
