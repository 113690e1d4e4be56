import fc from "fast-check";
import { expect, test } from "vitest";
import {
  addMoney,
  allocateMoney,
  decimalText,
  gbp,
  type Money,
  minorUnits,
  money,
  roundPence,
  sumMoney,
} from "./money.ts";

test("shares of an amount always add up to the amount", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: -1e9, max: 1e9 }),
      fc.array(fc.integer({ min: 0, max: 1000 }), { minLength: 1, maxLength: 12 }),
      (pence, weights) => {
        fc.pre(weights.some((weight) => weight > 0));
        const shares = allocateMoney(gbp(pence), weights);
        expect(sumMoney("GBP", shares).pence).toBe(pence === 0 ? 0 : pence);
        shares.forEach((share, index) => {
          if (weights[index] === 0) expect(Math.abs(share.pence)).toBeLessThanOrEqual(1);
        });
      },
    ),
  );
});

test("33.34 over four equal shares gives two of 8.34 and two of 8.33", () => {
  expect(allocateMoney(gbp(3334), [1, 1, 1, 1]).map((share) => share.pence)).toEqual([834, 834, 833, 833]);
});

test("half a penny and more rounds up, less rounds down (HMRC VATREC12030)", () => {
  expect([0.49, 0.5, 1.5, 2.4999, -0.5, -0.49].map(roundPence)).toEqual([0, 1, 2, 2, -1, 0]);
});

test("a part of a penny is refused", () => {
  expect(() => gbp(1.5)).toThrow(/whole number of pence/);
});

test("two currencies never add", () => {
  const pounds: Money<"GBP"> = gbp(100);
  const euros: Money<"EUR"> = money("EUR", 100);
  // @ts-expect-error pounds and euros are different things
  addMoney(pounds, euros);
  expect(addMoney(pounds, gbp(1)).pence).toBe(101);
});

test("an amount for a file has the digits of its currency (ISO 4217), and a zero before the point", () => {
  const texts = [0, 5, 100, -5, -1250, 123456789].map((pence) => decimalText(pence, "GBP"));
  expect(texts).toEqual(["0.00", "0.05", "1.00", "-0.05", "-12.50", "1234567.89"]);
  expect([decimalText(1250, "JPY"), decimalText(-1, "ISK"), decimalText(1, "KWD")]).toEqual([
    "1250",
    "-1",
    "0.001",
  ]);
  expect(["GBP", "EUR", "CHF", "NOK", "SEK", "DKK", "ISK", "JPY", "KWD"].map(minorUnits)).toEqual([
    2, 2, 2, 2, 2, 2, 0, 0, 3,
  ]);
  expect(() => decimalText(0.5, "GBP")).toThrow(/whole number/);
  expect(() => decimalText(1, "XXX")).toThrow(/no currency XXX/);
});

test("what cannot be a weight is refused, and nothing to share is shared as nothing", () => {
  for (const weights of [[], [0, 0], [1, -1], [1, Number.NaN], [1, Number.POSITIVE_INFINITY]])
    expect(() => allocateMoney(gbp(100), weights)).toThrow(/weights/);
  expect(allocateMoney(gbp(0), [1, 2]).map(({ pence }) => Math.abs(pence))).toEqual([0, 0]);
});
