/** For tests only: a hire that came back with a torn awning, and what the desk does about it. */
import type { DepotRecord } from "@setfair/records";
import { expect } from "vitest";
import { toJson } from "../desk/documents.ts";
import { testedStores } from "../store/stores-for-tests.ts";
import { type Answer, makeDepot, type TestDepot } from "./depot-for-tests.ts";
import { liveHire } from "./lived-hire-for-tests.ts";

export const TORN = "awning.fullyOut";
/** What money and entries rest on is asked of every store; what the rooms alone decide, of one. */
export const STORES = testedStores();
export type Kind = (typeof STORES)[number]["kind"];

/** The demo's terms with an awning of £900 that lives 8 years, no price list of repairs, and an excess of £1,000. */
async function putTerms(depot: TestDepot): Promise<void> {
  const [before] = await depot.store.terms.versions("hire");
  const document = structuredClone(before?.document) as {
    security: object;
    tariff: { damage: unknown; kit: unknown; noticeFeePence?: number };
  };
  document.security = { ...document.security, excessPence: 100_000, homePence: 100_000 };
  document.tariff = {
    ...document.tariff,
    damage: [],
    kit: { awning: { newPence: 90_000, lifeYears: 8, leastShare: 0.1 } },
    noticeFeePence: 1500,
  };
  await depot.store.terms.put({ of: "hire", validFrom: "2026-02-01", document: toJson(document) });
}

export interface Asked {
  readonly depot: TestDepot;
  readonly id: string;
  readonly mark: string;
}
export const path = ({ id }: Asked, rest = "") => `/hires/${id}/settlement${rest}`;
export async function must(answer: Promise<Answer>) {
  const { status, body } = await answer;
  expect(status, JSON.stringify(body)).toBe(200);
  return body;
}
export const problem = async (answer: Promise<Answer>): Promise<readonly [number, string]> => {
  const { status, body } = await answer;
  return [status, body.error?.problems[0]?.path ?? ""];
};

/** A hire that came back with a torn awning, photographed as it left or not. */
export async function tornAwning(withPhotograph: boolean, kind: Kind = "sqlite"): Promise<Asked> {
  const depot = await makeDepot(kind);
  await putTerms(depot);
  const { id } = await liveHire(depot, {
    also: (make, direction, photograph): DepotRecord[] => {
      const about = { about: TORN, checkId: TORN, direction };
      if (direction === "out")
        return withPhotograph ? [make("photograph", { ...about, sha256: photograph })] : [];
      const place = { part: "awning.cassette", view: "offside", xShare: 0.5, yShare: 0.2 };
      return [make("mark", { ...about, ...place, markKind: "tear", sizeMm: 300, photographs: [photograph] })];
    },
  });
  const { differences } = await must(depot.call("desk", "GET", `/hires/${id}/differences`));
  const torn = differences.find(({ difference }: { difference: { markKind?: string } }) => {
    return difference.markKind === "tear";
  });
  return { depot, id, mark: torn.id };
}

export const decide = (asked: Asked, more: object = {}) =>
  must(
    asked.depot.call("desk", "PUT", `/hires/${asked.id}/classes`, {
      classes: [
        { id: asked.mark, class: "hirer", reason: "Whole when it left, torn when it came.", ...more },
      ],
    }),
  );
export const note = (asked: Asked, body: object) =>
  asked.depot.call("manager", "POST", path(asked, "/notes"), body);
export const cost = (asked: Asked, kind: string, partsPence: number, labourPence: number) =>
  must(
    asked.depot.call("desk", "POST", path(asked, "/costs"), {
      differenceId: asked.mark,
      kind,
      partsPence,
      labourPence,
      reference: `Workshop ${kind} 1`,
    }),
  );
export const age = (asked: Asked) =>
  must(
    note(asked, {
      kind: "age",
      differenceId: asked.mark,
      ageYears: 4,
      reason: "Invoice of the awning, 2022",
    }),
  );
