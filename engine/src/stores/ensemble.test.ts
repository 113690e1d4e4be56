import { describe, expect, it } from "vitest";
import { indexOf } from "./ensemble.ts";
import { STORE_IDS } from "./stores.ts";

describe("the index of a store", () => {
  it("is its place in the list of stores, for each of them", () => {
    expect(STORE_IDS.map(indexOf)).toEqual(STORE_IDS.map((_, place) => place));
  });
});
