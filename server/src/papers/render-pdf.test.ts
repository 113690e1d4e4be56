import { createWords } from "@setfair/words";
import { beforeAll, describe, expect, it } from "vitest";
import { readPdf } from "./read-pdf-for-tests.ts";
import { renderPdf } from "./render-pdf.ts";

describe("a paper", () => {
  let read: { pages: string[]; tagged: boolean };
  beforeAll(async () => {
    const pdf = await renderPdf(
      {
        title: "Quote",
        from: "Invented Hire, 01632 960123",
        reference: "M-1",
        content: [{ text: "Łódź, Übergabe, £1,234.56" }, { text: "second page", pageBreak: "before" }],
      },
      createWords(),
    );
    read = await readPdf(pdf);
  }, 20_000);

  it("is a tagged PDF whose text can be read, accents and pounds too", () => {
    expect(read.tagged).toBe(true);
    expect(read.pages[0]).toContain("Łódź, Übergabe, £1,234.56");
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
