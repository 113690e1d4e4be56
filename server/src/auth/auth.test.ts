import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { makePlace, type TestPlace, testedStores } from "../store/stores-for-tests.ts";
import type { Database, Scope } from "../store/types.ts";
import { hirerOf, makeHirerLink } from "./hirer-links.ts";
import { checkPassword, hashPassword } from "./passwords.ts";
import { ACTS, type Act, may, ROLES } from "./roles.ts";
import { makeSetUpLink, setUp } from "./set-up.ts";
import { sessionOf, signIn, signOut } from "./sign-in.ts";
import { hashToken, newToken } from "./tokens.ts";

const PASSWORD = "a long enough password";
const given = {
  firm: { name: "Invented Hire" },
  depot: { name: "Depot", timeZone: "Europe/London", hours: [{ day: 1, opens: "09:00", closes: "17:00" }] },
  terms: [{ of: "hire", validFrom: "2026-01-01", document: { excessPence: 100_000 } }],
  manager: { login: "Pat@example.org", name: "Pat Invented", password: PASSWORD },
};

describe("roles", () => {
  test("every act is somebody's, and a hirer has only their own", () => {
    for (const act of Object.keys(ACTS) as Act[]) {
      expect(
        ROLES.some((role) => may(role, act)),
        act,
      ).toBe(true);
      expect(may("hirer", act), act).toBe(act.startsWith("own."));
    }
  });

  test("the yard neither sees money nor decides, and only a manager lets policy pass", () => {
    expect(may("yard", "record.write")).toBe(true);
    for (const act of [
      "hire.settle",
      "payment.write",
      "override.cover",
      "licence.read",
      "customer.see",
    ] as const) {
      expect(may("yard", act), act).toBe(false);
    }
    expect(ROLES.filter((role) => may(role, "override.policy"))).toEqual(["manager"]);
  });
});

describe("passwords and tokens", () => {
  test("only the right password fits, in whichever way its letters are composed", async () => {
    const hash = await hashPassword("Zoë goes camping");
    expect(hash).toMatch(/^\$argon2id\$v=19\$m=19456,t=2,p=1\$/);
    expect(await checkPassword(hash, "Zoë goes camping".normalize("NFD"))).toBe(true);
    expect(await checkPassword(hash, "zoë goes camping")).toBe(false);
    expect(await checkPassword(null, "Zoë goes camping")).toBe(false);
    expect(await checkPassword("no hash at all", "x")).toBe(false);
  });

  test("one too short is refused, and is not in the message", async () => {
    await expect(hashPassword("tiny")).rejects.toThrow(/^password: (?!.*tiny)/);
  });

  test("a token is 256 bits and is known again by its hash", () => {
    const one = newToken();
    expect(Buffer.from(one.token, "base64url")).toHaveLength(32);
    expect(hashToken(one.token)).toBe(one.tokenHash);
    expect(newToken().token).not.toBe(one.token);
  });
});

describe.each(testedStores())("signing in on $kind", ({ kind }) => {
  let place: TestPlace;
  let database: Database;
  let scope: Scope;
  let clock = new Date("2026-07-01T08:00:00Z");
  const later = (hours: number) => {
    clock = new Date(clock.getTime() + hours * 3_600_000);
  };

  beforeAll(async () => {
    place = await makePlace(kind);
    database = await place.open({ now: () => clock });
  });
  afterAll(() => place.remove());

  test("a firm starts from a link that serves once; a bad answer does not use it up", async () => {
    const { token } = await makeSetUpLink(database, clock);
    await expect(
      setUp(database, token, { ...given, depot: { ...given.depot, timeZone: "Mars/Base" } }),
    ).rejects.toThrow(/^depot\.timeZone: /);
    await expect(
      setUp(database, token, { ...given, manager: { ...given.manager, password: "short" } }),
    ).rejects.toThrow(/^manager\.password: /);
    const hours = [...given.depot.hours, { day: 2, opens: "17:00", closes: "09:00" }];
    await expect(setUp(database, token, { ...given, depot: { ...given.depot, hours } })).rejects.toThrow(
      /^depot\.hours: expected closes after opens/,
    );
    await expect(setUp(database, token, "nonsense")).rejects.toThrow();
    expect(await setUp(database, "guessed", given)).toEqual({ ok: false, why: "linkUnusable" });
    expect(await database.system.firmCount()).toBe(0);
    const made = await setUp(database, token, given);
    if (!made.ok) throw new Error(made.why);
    scope = made.scope;
    expect((await database.storeFor(scope).depot.get()).document).toEqual({ hours: given.depot.hours });
    await expect(setUp(database, token, given)).rejects.toThrow(/^manager\.login: /);
    const again = { ...given, manager: { ...given.manager, login: "other@example.org" } };
    expect(await setUp(database, token, again)).toEqual({ ok: false, why: "linkUnusable" });
  });

  test("a set-up link grows old", async () => {
    const { token } = await makeSetUpLink(database, clock);
    later(48);
    expect(
      await setUp(database, token, { ...given, manager: { ...given.manager, login: "late@example.org" } }),
    ).toMatchObject({ ok: false });
  });

  test("whoever signs in is known by the token until they sign out or the day is over", async () => {
    for (const [login, password] of [
      ["pat@example.org", "wrong password"],
      ["nobody@example.org", PASSWORD],
      ["a\0b", PASSWORD],
    ] as const) {
      expect(await signIn(database, login, password, clock)).toEqual({ ok: false, why: "wrongSignIn" });
    }
    const signed = await signIn(database, " PAT@example.org", PASSWORD, clock);
    if (!signed.ok) throw new Error(signed.why);
    expect(await sessionOf(database, signed.token)).toMatchObject({
      scope,
      account: { role: "manager", login: "pat@example.org" },
    });
    expect(JSON.stringify(signed.session)).not.toContain("argon2");
    await signOut(database, signed.token);
    expect(await sessionOf(database, signed.token)).toBeNull();
    const again = await signIn(database, "pat@example.org", PASSWORD, clock);
    if (!again.ok) throw new Error(again.why);
    later(14);
    expect(await sessionOf(database, again.token)).toBeNull();
  });

  test("a hirer's link opens one hire until it is too old", async () => {
    const store = database.storeFor(scope);
    const hire = await store.hires.create({ from: "2026-07-10T14:00:00Z", to: "2026-07-17T09:00:00Z" });
    const ends = new Date("2026-07-24T09:00:00Z");
    const made = await makeHirerLink(store, hire.id, ends, clock);
    expect(await hirerOf(database, made!.token)).toMatchObject({ scope, hireId: hire.id });
    expect(await hirerOf(database, `${made!.token}x`)).toBeNull();
    expect(JSON.stringify(await store.links.ofHire(hire.id))).not.toContain(made!.token);
    expect(await makeHirerLink(store, "nobody", ends, clock)).toBeNull();
    await expect(makeHirerLink(store, hire.id, new Date("2027-07-24T09:00:00Z"), clock)).rejects.toThrow(
      /^expiresAt: /,
    );
    await expect(makeHirerLink(store, hire.id, clock, clock)).rejects.toThrow(/^expiresAt: /);
    clock = ends;
    expect(await hirerOf(database, made!.token)).toBeNull();
  });
});
