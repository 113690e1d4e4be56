import type { LateClaim, LateLoss, RepairCost, SettlementInput } from "@setfair/engine";
import type { SettlementEntryRow, Store } from "../store/types.ts";
import { asDocument } from "./documents.ts";
import type { HireData } from "./hire-data.ts";

export const entriesOfHire = (store: Store, data: Pick<HireData, "row">) =>
  store.settlementEntries.ofHires([data.row.id]);

type Entries = readonly SettlementEntryRow[];

/** What the hirer last said of each line: true where they dispute it, false where they accept it. */
export function disputesOf(entries: Entries): ReadonlyMap<string, boolean> {
  const said = new Map<string, boolean>();
  for (const { kind, about } of entries)
    if (kind === "accept" || kind === "dispute") said.set(about, kind === "dispute");
  return said;
}

function costsOf(entries: Entries, kind: "estimate" | "invoice"): Record<string, RepairCost> {
  return Object.fromEntries(
    entries
      .filter((entry) => entry.kind === kind)
      .map(({ about, document }) => {
        const { partsPence, labourPence } = asDocument<RepairCost>(document);
        return [about, { partsPence, labourPence }];
      }),
  );
}

const aboutsOf = (entries: Entries, kind: SettlementEntryRow["kind"]): string[] => [
  ...new Set(entries.filter((entry) => entry.kind === kind).map(({ about }) => about)),
];

/** The last word on each thing of one kind. */
const lastOf = <T>(entries: Entries, kind: SettlementEntryRow["kind"], read: (document: object) => T) =>
  Object.fromEntries(
    entries.filter((entry) => entry.kind === kind).map(({ about, document }) => [about, read(document)]),
  );

/** Cleaning beyond the included standard, with what shows it; the last entry holds. */
interface CleaningDocument {
  readonly hours: number;
  readonly photographs: readonly string[];
}
interface LossDocument {
  readonly what: LateLoss["kind"];
  readonly pence: number;
  readonly reason: string;
  readonly photographs: readonly string[];
}
type ClaimDocument = Omit<LateClaim, "id" | "secondSigned">;
/** A fine or a toll that was passed on, as hirer and desk speak of it; it is charged in the ledger and no line of the settlement. */
export const noticeId = (entryId: string): string => `notice:${entryId}`;
const isNotice = (lineId: string): boolean => lineId.startsWith(noticeId(""));
/** True for the id of a fine or a toll that was passed on with this hire. */
export const isNoticeOf = (entries: Entries, lineId: string): boolean =>
  entries.some(({ kind, id }) => kind === "notice" && noticeId(id) === lineId);

/** Charges in the ledger for one fine or toll: the sum of the notice and the fee for dealing with it. */
export const chargesOfNotice = ({ document }: Pick<SettlementEntryRow, "document">): readonly string[] => {
  const { id } = asDocument<{ id: string }>(document);
  return [id, `${id}-fee`];
};

/** Charges for fines and tolls that the hirer disputes and the depot has not taken back. */
export function disputedCharges(entries: Entries): readonly string[] {
  const said = disputesOf(entries);
  const withdrawn = aboutsOf(entries, "withdraw");
  return entries
    .filter(({ kind, id }) => kind === "notice" && said.get(noticeId(id)) === true)
    .filter(({ id }) => !withdrawn.includes(noticeId(id)))
    .flatMap(chargesOfNotice);
}

export const claimId = (entryId: string): string => `claim:${entryId}`;

function claimsOf(entries: Entries, signed: readonly string[]): LateClaim[] {
  return entries
    .filter(({ kind }) => kind === "claim")
    .map(({ id, document }) => {
      const { about, cost, ageYears, lifeYears, incident, photographs, departure } =
        asDocument<ClaimDocument>(document);
      const line = claimId(id);
      const base = { about, cost, ageYears, lifeYears, incident, photographs, departure };
      return { ...base, id: line, secondSigned: signed.includes(line) };
    });
}

function cleaningOf(entries: Entries): Pick<SettlementInput, "cleaning"> {
  const last = entries.findLast(({ kind }) => kind === "cleaning");
  if (last === undefined) return {};
  const { hours, photographs } = asDocument<CleaningDocument>(last.document);
  return { cleaning: { hours, records: [], photographs: [...photographs] } };
}

/** The last loss of each kind that a late return brought. */
function lossesOf(entries: Entries): LateLoss[] {
  const told = entries
    .filter(({ kind }) => kind === "loss")
    .map(({ document }) => asDocument<LossDocument>(document));
  return [...new Map(told.map((loss) => [loss.what, loss])).values()].map(
    ({ what, pence, reason, photographs }) => {
      return { kind: what, pence, about: reason, records: [], photographs: [...photographs] };
    },
  );
}

/** The settlement's input with everything that was said and paid since; the last word on each thing holds. */
export function withEntries(input: SettlementInput, entries: Entries): SettlementInput {
  const withdrawn = aboutsOf(entries, "withdraw");
  const second = aboutsOf(entries, "second");
  return {
    ...input,
    ...cleaningOf(entries),
    lateLosses: lossesOf(entries),
    claims: claimsOf(entries, second),
    partAges: lastOf(entries, "age", (document) => (document as { ageYears: number }).ageYears),
    awaiting: lastOf(entries, "awaiting", (document) => (document as { mostPence: number }).mostPence),
    estimates: { ...input.estimates, ...costsOf(entries, "estimate") },
    invoices: { ...input.invoices, ...costsOf(entries, "invoice") },
    secondSigned: [...(input.secondSigned ?? []), ...second],
    withdrawn,
    disputed: [...disputesOf(entries)].flatMap(([id, isDisputed]) =>
      isDisputed && !isNotice(id) && !withdrawn.includes(id) ? [id] : [],
    ),
  };
}

/** The day by which the depot has promised an answer on what it holds; null where nothing was promised. */
export function promisedOn(entries: Entries): string | null {
  const last = entries.findLast(({ kind }) => kind === "hold");
  return last === undefined ? null : asDocument<{ promisedOn: string }>(last.document).promisedOn;
}
