import fc from "fast-check";
import { expect, test } from "vitest";
import { addMoney, allocateMoney, gbp, type Money, money, roundPence, sumMoney } from "./money.ts";

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
