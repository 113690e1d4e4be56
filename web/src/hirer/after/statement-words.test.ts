import "../../parts/all-words.ts";
import type { SettlementLine } from "@setfair/engine";
import { expect, it } from "vitest";
import { lineWorking } from "./statement-words.ts";

const line = (value: number, unit: string, inputs: object) =>
  ({
    quantity: { value, unit, formula: "-", basis: "measured", inputs },
    working: [],
  }) as unknown as SettlementLine;
const said = (...of: Parameters<typeof line>) => lineWorking(line(...of))[0];

it("a gauge that was read in shares of the tank is said in shares, not in litres", () => {
  expect(said(18.75, "L", { out: 1, back: 0.75, readIn: "share", tankLitres: 75 })).toBe(
    "Measured: 18.8 L · Out 100 %, back 75 % of 75 L",
  );
});

it("a range that was read in km is said in km", () => {
  expect(said(0.45, "L", { out: 9000, back: 8700, readIn: "km" })).toBe(
    "Measured: 0.45 L · Out 9,000 km, back 8,700 km",
  );
});

it("of a statement from before the unit was kept the readings stand only where they are in its own", () => {
  expect(said(2, "kg", { out: 12, back: 10 })).toBe("Measured: 2 kg · Out 12 kg, back 10 kg");
  expect(said(18.75, "L", { out: 1, back: 0.75, tankLitres: 75 })).toBe("Measured: 18.8 L");
});
