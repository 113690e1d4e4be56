import { createRequire } from "node:module";

/** What pdfmake hands from its layout to its writer; its published types say nothing of either. */
interface Line {
  readonly lastLineInParagraph?: boolean;
  readonly inlines: readonly { readonly fontSize: number; readonly bold?: boolean }[];
}
interface Described {
  /** what it shows, for whoever cannot see it */
  readonly alt?: string;
}
interface Element {
  end(): void;
}
interface TaggedPdf {
  readonly page: { readonly height: number };
  markContent(tag: "Artifact", options: { readonly type: string }): void;
  markStructureContent(tag: string): object;
  endMarkedContent(): void;
  struct(tag: string, options: object, children: readonly object[]): Element;
  addStructure(element: Element): void;
}
interface Writer {
  readonly pdfDocument: TaggedPdf;
  /** lines of the paragraph that is being written */
  marks?: object[];
}
interface WriterClass {
  readonly prototype: Writer & {
    renderLine(this: Writer, line: Line, x: number, y: number): void;
    renderImage(this: Writer, image: Described): void;
    renderSVG(this: Writer, svg: Described): void;
    renderVector(this: Writer, vector: object): void;
  };
}

/** Room at the foot of every page that holds its number and no content, points. */
export const FOOT_PT = 60;

const TITLE_PT = 20;
const HEADING_PT = 13;

const tagOf = ({ inlines }: Line): "H1" | "H2" | "P" => {
  const size = inlines[0]?.fontSize ?? 0;
  return size >= TITLE_PT ? "H1" : size >= HEADING_PT ? "H2" : "P";
};

function artifact({ pdfDocument }: Writer, type: "Pagination" | "Layout", write: () => void): void {
  pdfDocument.markContent("Artifact", { type });
  write();
  pdfDocument.endMarkedContent();
}

function marked({ pdfDocument }: Writer, tag: string, write: () => void): object {
  const content = pdfDocument.markStructureContent(tag);
  write();
  pdfDocument.endMarkedContent();
  return content;
}

function keep({ pdfDocument }: Writer, tag: string, options: object, children: readonly object[]): void {
  const element = pdfDocument.struct(tag, options, children);
  pdfDocument.addStructure(element);
  element.end();
}

function figureOrLine(writer: Writer, { alt }: Described, write: () => void): void {
  if (alt === undefined) artifact(writer, "Layout", write);
  else keep(writer, "Figure", { alt }, [marked(writer, "Figure", write)]);
}

/**
 * Lets pdfmake write the structure that a screen reader follows (ISO 32000-1, 14.7 and 14.8): headings, paragraphs and
 * figures with their alternative text, in reading order. A table is read row by row as paragraphs; lines and the foot
 * of a page are no content. pdfmake itself marks a document as tagged and writes no structure.
 */
export function writeStructure(): void {
  const { default: Renderer } = createRequire(import.meta.url)("pdfmake/js/Renderer.js") as {
    default: WriterClass;
  };
  const { renderLine, renderImage, renderSVG, renderVector } = Renderer.prototype;
  Object.assign(Renderer.prototype, {
    renderLine(this: Writer, line: Line, x: number, y: number) {
      const write = () => renderLine.call(this, line, x, y);
      if (y > this.pdfDocument.page.height - FOOT_PT) return artifact(this, "Pagination", write);
      const tag = tagOf(line);
      this.marks = [...(this.marks ?? []), marked(this, tag, write)];
      if (line.lastLineInParagraph === false) return;
      keep(this, tag, {}, this.marks);
      this.marks = [];
    },
    renderImage(this: Writer, image: Described) {
      figureOrLine(this, image, () => renderImage.call(this, image));
    },
    renderSVG(this: Writer, svg: Described) {
      figureOrLine(this, svg, () => renderSVG.call(this, svg));
    },
    renderVector(this: Writer, vector: object) {
      artifact(this, "Layout", () => renderVector.call(this, vector));
    },
  });
}
