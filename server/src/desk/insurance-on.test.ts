import { expect, it } from "vitest";
import type { DatedVersion } from "../store/types.ts";
import { insuranceOn } from "./insurance-on.ts";

const version = (versionId: string, validFrom: string, validTo: string): DatedVersion => ({
  versionId,
  of: "insurance",
  validFrom,
  document: { id: versionId, validFrom, validTo },
  hash: versionId,
  createdAt: "2026-01-01T00:00:00.000Z",
});
const on = (versions: readonly DatedVersion[], first: string, last: string) => {
  const found = insuranceOn(versions, { first, last, today: "2026-06-01" });
  return [found?.version.versionId, ...(found?.following ?? []).map(({ id }) => id)];
};
const old = version("2026", "2026-01-01", "2026-12-31");
const renewed = version("2027", "2027-01-01", "2027-12-31");

it("a hire over the day of a renewal has both policies, one that ends before it the first alone", () => {
  expect(on([old, renewed], "2026-12-29", "2027-01-02")).toEqual(["2026", "2027"]);
  expect(on([old, renewed], "2026-12-29", "2026-12-31")).toEqual(["2026"]);
  expect(on([old, renewed], "2027-01-01", "2027-01-05")).toEqual(["2027"]);
  expect(on([old], "2026-12-29", "2027-01-02")).toEqual(["2026"]);
});

it("of a renewal written twice the later counts, and one that ends no later than the policy ends the search", () => {
  const again = version("2027 again", "2027-01-01", "2027-06-30");
  expect(on([old, renewed, again], "2026-12-29", "2027-01-02")).toEqual(["2026", "2027 again"]);
  const short = version("short", "2027-01-01", "2026-12-31");
  expect(on([old, short], "2026-12-29", "2027-01-02")).toEqual(["2026"]);
});

it("two renewals follow each other over a hire of more than a year", () => {
  const third = version("2028", "2028-01-01", "2028-12-31");
  expect(on([old, renewed, third], "2026-12-29", "2028-01-02")).toEqual(["2026", "2027", "2028"]);
});
