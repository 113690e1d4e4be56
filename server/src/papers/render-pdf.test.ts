import { createWords } from "@setfair/words";
import { beforeAll, describe, expect, it } from "vitest";
import { heading } from "./pieces.ts";
import { readPdf } from "./read-pdf-for-tests.ts";
import { renderPdf } from "./render-pdf.ts";

describe("a paper", () => {
  let read: { pages: string[]; tagged: boolean; roles: string[] };
  beforeAll(async () => {
    const pdf = await renderPdf(
      {
        title: "Quote",
        from: "Invented Hire, 01632 960123",
        reference: "M-1",
        content: [
          { text: "Łódź, Übergabe, £1,234.56" },
          heading("second page", true),
          { text: "one paragraph over several lines ".repeat(12) },
          { svg: '<svg viewBox="0 0 9 9"><path d="M0 0h9"/></svg>', width: 40, ...{ alt: "a signature" } },
        ],
      },
      createWords(),
    );
    read = await readPdf(pdf);
  }, 20_000);

  it("is a tagged PDF whose text can be read, accents and pounds too", () => {
    expect(read.tagged).toBe(true);
    expect(read.pages[0]).toContain("Łódź, Übergabe, £1,234.56");
  });

  it("has headings, whole paragraphs and figures with their words, in reading order, for a screen reader", () => {
    expect(read.roles.filter((role) => role !== "Root")).toEqual([
      "H1",
      "P",
      "P",
      "H2",
      "P",
      "Figure: a signature",
    ]);
  });

  it("carries its reference and the number of the page on every page", () => {
    expect(read.pages).toHaveLength(2);
    expect(read.pages[1]).toMatch(/M-1.*Page 2 of 2/);
  });

  it("takes no file and no address from outside", async () => {
    for (const image of ["/etc/passwd", "http://127.0.0.1:1/x.png"]) {
      const made = renderPdf({ title: "x", from: "x", reference: "x", content: [{ image }] }, createWords());
      await expect(made).rejects.toThrow();
    }
  });
});
