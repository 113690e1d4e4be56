/** What is done to vehicles, read off them and wrong with them. */
import type { JsonObject } from "../basic-types.ts";

export const UPKEEP_KINDS = ["done", "damp", "water", "frost"] as const;
/** Something done to a vehicle or read off it. Kept for ever. */
export interface UpkeepRow {
  readonly id: string;
  readonly vehicleId: string;
  /** done: a duty of the due-date book · damp: a meter's reading · water: flushed, sanitised · frost: drained, laid up */
  readonly kind: (typeof UPKEEP_KINDS)[number];
  readonly on: string;
  readonly document: JsonObject;
  readonly by: string;
  readonly at: string;
}
export interface DefectRow {
  readonly id: string;
  readonly vehicleId: string;
  /** on which it was noted, where on a hire */
  readonly hireId: string | null;
  readonly class: "safety" | "comfort";
  readonly document: JsonObject;
  readonly by: string;
  readonly at: string;
  readonly closed: { readonly at: string; readonly by: string; readonly how: string } | null;
}
/** A hirer was told of a defect and signed for it. */
export interface DisclosureRow {
  readonly id: string;
  readonly defectId: string;
  readonly hireId: string;
  readonly signer: string;
  readonly by: string;
  readonly at: string;
}

/** Part of the depot's `Store`. */
export interface UpkeepStores {
  readonly upkeep: {
    add(entry: Omit<UpkeepRow, "id" | "at">): Promise<UpkeepRow>;
    /** Oldest first. */
    ofVehicles(vehicleIds: readonly string[]): Promise<readonly UpkeepRow[]>;
  };
  readonly defects: {
    add(defect: Omit<DefectRow, "id" | "at" | "closed">): Promise<DefectRow>;
    get(id: string): Promise<DefectRow | null>;
    /** Oldest first, closed ones too. */
    ofVehicles(vehicleIds: readonly string[]): Promise<readonly DefectRow[]>;
    /** False where it is closed already. */
    close(id: string, how: { readonly by: string; readonly how: string }): Promise<boolean>;
    disclose(told: Omit<DisclosureRow, "id" | "at">): Promise<DisclosureRow>;
    disclosures(hireIds: readonly string[]): Promise<readonly DisclosureRow[]>;
  };
}
