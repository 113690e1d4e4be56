import type { InsurancePolicy, Terms } from "@setfair/engine";
import type { Store } from "@setfair/server";
import type { DemoCustomer, DemoHire } from "./demo-hire.ts";
import type { DemoVehicle } from "./vehicles.ts";

/** The depot while it is being filled. */
export interface DemoDepot {
  readonly store: Store;
  readonly by: string;
  readonly now: Date;
  readonly today: string;
  readonly timeZone: string;
  readonly turnaroundMinutes: number;
  readonly terms: Terms;
  readonly termsVersionId: string;
  readonly insurance: InsurancePolicy;
  readonly vehicles: ReadonlyMap<string, DemoVehicle>;
  /** customers that have a row, for those who come again */
  /** where photographs go; null where none are kept */
  readonly keepPhotograph: ((jpeg: Buffer, sha256: string, hireId: string) => Promise<void>) | null;
  /** hires whose walk-rounds have photographs */
  readonly photographed: ReadonlySet<DemoHire>;
  readonly customerIds: Map<DemoCustomer, string>;
  /** hires whose vehicle is free again once all are in */
  readonly over: string[];
}

export type PutPart = (part: Parameters<Store["hires"]["putPart"]>[1], document: object) => Promise<void>;
