import { renderToStaticMarkup } from "react-dom/server";
import { expect, it } from "vitest";
import "./all-words.ts";
import { FigureSums } from "./figure-tap.tsx";

it("a price of the terms says in words from which day the terms of the hire hold, and by which version", () => {
  const inputs = { of: "awning", kind: "tear", termsFrom: "2026-01-01" };
  const figure = {
    value: 14_000,
    unit: "pence",
    formula: "-",
    inputs,
    basis: "declared",
    source: "terms-a",
  } as const;
  const shown = renderToStaticMarkup(<FigureSums figure={figure} label="Damage: Awning" />);
  expect(shown).toContain("<dt>by the terms of this hire, which hold from</dt><dd>Thu 1 January 2026</dd>");
  expect(shown).toContain("<dd>terms-a</dd>");
  expect(shown).toContain("<dd>tear</dd>");
});
