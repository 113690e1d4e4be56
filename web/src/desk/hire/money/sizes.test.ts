import { expect, test } from "vitest";
import { asksWith, sizedCount, sizesIn } from "./sizes.ts";

const ASKS = [
  { kind: "childRestraint", size: "40-105 cm", count: 1 },
  { kind: "snowChains", count: 1 },
  { kind: "onHireCertificate", size: "pv2", count: 1 },
];

test("sizes of the quote's extras replace those asked for before, and everything else stays", () => {
  expect(sizesIn(ASKS)).toEqual({ childRestraint: { "40-105 cm": 1 }, onHireCertificate: { pv2: 1 } });
  const sizes = { childRestraint: { "40-105 cm": 0, "100-150 cm": 2 } };
  expect(asksWith(ASKS, sizes, ["childRestraint", "snowChains"])).toEqual([
    ASKS[1],
    ASKS[2],
    { kind: "childRestraint", size: "100-150 cm", count: 2 },
  ]);
  expect([sizedCount(sizes.childRestraint), sizedCount(undefined)]).toEqual([2, 0]);
});
