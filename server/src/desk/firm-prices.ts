import { composeWalkRound, listCountedThings, type Terms } from "@setfair/engine";
import type { z } from "zod";
import { NO_VERSION } from "../api/based-on.ts";
import type { firmPricesSchema } from "../api/schemas/firm-prices.ts";
import type { DatedVersion, Store } from "../store/types.ts";
import { asDocument, type VehicleDocument } from "./documents.ts";
import { accountNames } from "./names.ts";

type Answer = z.input<typeof firmPricesSchema>;
type Change = Answer["changes"][number]["lines"][number];
/** What things are worth new, and what repairs cost. */
export type PriceLists = Pick<Terms["tariff"], "kit" | "damage">;
type Repair = PriceLists["damage"][number];
type Kit = PriceLists["kit"][string];

const termsOf = ({ document }: DatedVersion): Terms => asDocument<Terms>(document);
export const listsOf = ({ tariff }: Terms): PriceLists => ({ kit: tariff.kit, damage: tariff.damage });

/** What a line of repairs is told apart by: what, how it is damaged, and up to which size. */
export const repairKey = ({ of, kind, upToMm }: Pick<Repair, "of" | "kind" | "upToMm">): string =>
  `${of} ${kind} ${upToMm ?? "any"}`;

const sameKit = (a: Kit | undefined, b: Kit | undefined): boolean =>
  a?.newPence === b?.newPence && a?.lifeYears === b?.lifeYears && a?.leastShare === b?.leastShare;
const sameRepair = (a: Repair | undefined, b: Repair | undefined): boolean =>
  a?.pence === b?.pence &&
  a?.part === b?.part &&
  a?.lifeYears === b?.lifeYears &&
  a?.leastShare === b?.leastShare;

/** Every line that two lists do not have alike, with its price in each; null where it has none. */
function differing(before: PriceLists, after: PriceLists): Change[] {
  const names = [...new Set([...Object.keys(before.kit), ...Object.keys(after.kit)])];
  const kit = names.filter((id) => !sameKit(before.kit[id], after.kit[id]));
  const [was, is] = [before, after].map(
    ({ damage }) => new Map(damage.map((row) => [repairKey(row), row])),
  ) as [Map<string, Repair>, Map<string, Repair>];
  const repairs = [...new Map([...was, ...is])].filter(([key]) => !sameRepair(was.get(key), is.get(key)));
  return [
    ...kit.map((id): Change => {
      const [a, b] = [before.kit[id]?.newPence ?? null, after.kit[id]?.newPence ?? null];
      return { list: "kit", name: id, kind: null, upToMm: null, wasPence: a, isPence: b };
    }),
    ...repairs.map(([key, { of, kind, upToMm }]): Change => {
      const [a, b] = [was.get(key)?.pence ?? null, is.get(key)?.pence ?? null];
      return { list: "repairs", name: of, kind, upToMm: upToMm ?? null, wasPence: a, isPence: b };
    }),
  ];
}

export const hasSameLists = (a: PriceLists, b: PriceLists): boolean => differing(a, b).length === 0;

/** The versions that hold, one a day, the earliest first: of several of one day the one written last. */
export function inForce(versions: readonly DatedVersion[]): readonly DatedVersion[] {
  return versions.filter(({ validFrom }, k) => versions[k + 1]?.validFrom !== validFrom);
}

/** The version that another one took the place of when it was written, from its day on; null for the first. Ids rise as versions are written. */
const before = (version: DatedVersion, versions: readonly DatedVersion[]): DatedVersion | null =>
  versions.findLast(
    ({ versionId, validFrom }) => validFrom <= version.validFrom && versionId < version.versionId,
  ) ?? null;

/** Who wrote each version, by its id. */
async function writersOf(store: Store): Promise<ReadonlyMap<string, string>> {
  const writers = new Map<string, string>();
  for (let after: string | null = ""; after !== null; ) {
    const page: Awaited<ReturnType<Store["audit"]["list"]>> = await store.audit.list({
      about: "hire",
      limit: 200,
      ...(after === "" ? {} : { after }),
    });
    for (const { by, document } of page.rows) {
      const { versionId } = asDocument<{ versionId?: string }>(document);
      if (versionId !== undefined) writers.set(versionId, by);
    }
    after = page.next;
  }
  return writers;
}

/** From which version on a line has been as it is now. */
function sinceOf(
  chain: readonly DatedVersion[],
  isSame: (lists: PriceLists) => boolean,
): DatedVersion | undefined {
  const lastOther = chain.findLastIndex((version) => !isSame(listsOf(termsOf(version))));
  return chain[lastOther + 1];
}

/** Later versions, those with the same lists under the same number; the lists of today have 0. */
function likes(now: PriceLists, later: readonly DatedVersion[]): Answer["later"] {
  const kinds = [now];
  return later.map((version) => {
    const lists = listsOf(termsOf(version));
    const known = kinds.findIndex((each) => hasSameLists(each, lists));
    const like = known < 0 ? kinds.push(lists) - 1 : known;
    return { versionId: version.versionId, validFrom: version.validFrom, like };
  });
}

/** What things are worth, what repairs cost, since when, and who changed what; with what the fleet counts and nobody has priced. */
export async function readFirmPrices(store: Store, today: string): Promise<Answer> {
  const versions = await store.terms.versions("hire");
  const newest = await store.terms.newest("hire");
  const holding = inForce(versions);
  const chain = holding.filter(({ validFrom }) => validFrom <= today);
  const now = chain.at(-1);
  const lists = now === undefined ? { kit: {}, damage: [] } : listsOf(termsOf(now));
  const [writers, nameOf] = [await writersOf(store), await accountNames(store)];
  const writerOf = ({ versionId }: DatedVersion): string | null => {
    const by = writers.get(versionId);
    return by === undefined ? null : nameOf(by);
  };
  const since = (isSame: (lists: PriceLists) => boolean) => {
    const version = sinceOf(chain, isSame);
    if (version === undefined) throw new Error("readFirmPrices: a line of no version");
    return { from: version.validFrom, by: writerOf(version) };
  };
  const fleet = (await store.vehicles.allOn(today)).map(
    ({ document }) => asDocument<VehicleDocument>(document).description,
  );
  const rounds = fleet.map((description) => composeWalkRound(description, "back"));
  return {
    newest: newest?.versionId ?? NO_VERSION,
    written: newest === null ? null : { validFrom: newest.validFrom, ...listsOf(termsOf(newest)) },
    today:
      now === undefined
        ? null
        : { versionId: now.versionId, termsId: termsOf(now).id, validFrom: now.validFrom },
    kit: Object.entries(lists.kit).map(([id, thing]) => ({
      id,
      ...thing,
      since: since(({ kit }) => sameKit(kit[id], thing)),
    })),
    repairs: lists.damage.map((row) => ({
      ...row,
      since: since(({ damage }) =>
        sameRepair(
          damage.find((each) => repairKey(each) === repairKey(row)),
          row,
        ),
      ),
    })),
    later: likes(
      lists,
      holding.filter(({ validFrom }) => validFrom > today),
    ),
    counted: listCountedThings(rounds, lists.kit).map((thing) => ({ ...thing })),
    fitted: [...new Set(fleet.flatMap(({ systems }) => systems.map(({ kind }) => kind)))],
    changes: versions
      .map((version) => {
        const previous = before(version, versions);
        const was = previous === null ? { kit: {}, damage: [] } : listsOf(termsOf(previous));
        return {
          versionId: version.versionId,
          validFrom: version.validFrom,
          writtenAt: version.createdAt,
          by: writerOf(version),
          lines: differing(was, listsOf(termsOf(version))),
        };
      })
      .filter(({ lines }) => lines.length > 0)
      .sort((a, b) => (a.versionId < b.versionId ? 1 : -1)),
  };
}
