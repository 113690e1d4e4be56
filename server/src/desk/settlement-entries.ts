import type { RepairCost, SettlementInput } from "@setfair/engine";
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

/** The settlement's input with everything that was said and paid since; the last word on each thing holds. */
export function withEntries(input: SettlementInput, entries: Entries): SettlementInput {
  const withdrawn = aboutsOf(entries, "withdraw");
  return {
    ...input,
    estimates: { ...input.estimates, ...costsOf(entries, "estimate") },
    invoices: { ...input.invoices, ...costsOf(entries, "invoice") },
    secondSigned: [...(input.secondSigned ?? []), ...aboutsOf(entries, "second")],
    withdrawn,
    disputed: [...disputesOf(entries)].flatMap(([id, isDisputed]) =>
      isDisputed && !withdrawn.includes(id) ? [id] : [],
    ),
  };
}

/** The day by which the depot has promised an answer on what it holds; null where nothing was promised. */
export function promisedOn(entries: Entries): string | null {
  const last = entries.findLast(({ kind }) => kind === "hold");
  return last === undefined ? null : asDocument<{ promisedOn: string }>(last.document).promisedOn;
}
