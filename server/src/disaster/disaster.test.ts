import { describe, expect, it } from "vitest";
import { killMigrations } from "../store/kill-migrations-for-tests.ts";
import { testedStores } from "../store/stores-for-tests.ts";
import { runLife } from "./life-for-tests.ts";

// The short form of `npm run drill:disaster`.

describe.each(testedStores())("a server that is ended in the middle, on $kind", ({ kind }) => {
  it("leaves nothing half written, loses nothing and sends nothing twice", async () => {
    const kills = kind === "sqlite" ? undefined : (["records", "keys"] as const);
    const figures = await runLife(kind, 7, kills);
    expect(figures.kills).toBeGreaterThanOrEqual(figures.found.length);
    expect(figures.found.length).toBe(kills?.length ?? 5);
  }, 400_000);
});

describe("a store whose tables are just brought up to date", () => {
  it("is as before or as it is to be, wherever the process was ended", async () => {
    expect(await killMigrations(3, 11)).toMatchObject({ kills: 3 });
  }, 300_000);
});
