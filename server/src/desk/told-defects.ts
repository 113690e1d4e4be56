import type { DepotRecord } from "@setfair/records";
import type { Store } from "../store/types.ts";
import { asDocument } from "./documents.ts";
import type { DefectDocument, VehicleUpkeep } from "./vehicle-upkeep.ts";

/** A record of this says that the hirer was told of the defect; a signature over it makes it told. */
const ABOUT = "defect.";

/** Open defects of comfort, as the hirer is told of them, with whether this hirer signed for each. */
export function comfortDefects(upkeep: VehicleUpkeep, told: readonly { readonly defectId: string }[]) {
  return upkeep.defects
    .filter(({ closed, class: kind }) => closed === null && kind === "comfort")
    .map(({ id, document }) => {
      const { what, where } = asDocument<DefectDocument>(document);
      return { id, what, where, told: told.some(({ defectId }) => defectId === id) };
    });
}

interface Told {
  readonly defectId: string;
  readonly hireId: string;
  readonly signer: string;
}

/** What the hirer's signatures among these records cover of told defects. */
async function toldBy(store: Store, signatures: readonly DepotRecord[]): Promise<readonly Told[]> {
  const told: Told[] = [];
  for (const { content, refs } of signatures) {
    const { signer, records } = content as {
      readonly signer: { readonly name: string };
      readonly records: readonly { readonly id: string }[];
    };
    if (refs.hireId === undefined) continue;
    const notes = await store.records.list({ hireId: refs.hireId, kind: "note" });
    const covered = new Set(records.map(({ id }) => id));
    for (const { record } of notes) {
      if (!covered.has(record.id) || !("content" in record)) continue;
      const about = record.content.about;
      if (typeof about !== "string" || !about.startsWith(ABOUT)) continue;
      told.push({ defectId: about.slice(ABOUT.length), hireId: refs.hireId, signer: signer.name });
    }
  }
  return told;
}

/** Notes for good which hirer was told of which defect, as their signatures say; records that come again change nothing. */
export async function keepToldDefects(
  store: Store,
  records: readonly DepotRecord[],
  by: string,
): Promise<void> {
  const signatures = records.filter(
    ({ kind, content }) =>
      kind === "signature" && (content.role === "hirer" || content.role === "additionalDriver"),
  );
  for (const { defectId, hireId, signer } of await toldBy(store, signatures)) {
    const defect = await store.defects.get(defectId);
    const before = await store.defects.disclosures([hireId]);
    if (defect === null || before.some((one) => one.defectId === defectId)) continue;
    await store.defects.disclose({ defectId, hireId, signer, by });
  }
}
