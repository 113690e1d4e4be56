import type { DepotRecord } from "@setfair/records";
import { Dexie, type Table } from "dexie";
import type { components } from "../api/types.generated.ts";

export type YardJob = components["schemas"]["YardJob"];
export type Turnaround = components["schemas"]["Turnaround"];
export type Guide = components["schemas"]["Guide"];

/** How a record leaves this device: as the signed-in person, or by the hirer's link. */
export type Via = "staff" | { readonly token: string };

/** waiting: not sent yet · sent: the server has it · refused: the server would not take it, kept and shown */
export type SendState = "waiting" | "sent" | "refused";

/** A record made on this device, kept until and after it was sent. Its id is its idempotency key. */
export interface KeptRecord {
  readonly id: string;
  readonly chain: string;
  readonly seq: number;
  readonly hash: string;
  readonly record: DepotRecord;
  /** "staff" or `link:<token>` */
  readonly via: string;
  readonly state: SendState;
  /** why the server refused it */
  readonly problem?: string;
  /** photographs that go first */
  readonly photographs: readonly string[];
}

/** The JPEG as it was made on this device, unaltered, under the hash of its bytes. */
export interface KeptPhotograph {
  readonly sha256: string;
  readonly chain: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly takenAt: string;
  readonly state: SendState;
  readonly problem?: string;
}

/** A walk-round as it stands on this device; written at every touch, so that a reload loses nothing. */
export interface KeptRound {
  readonly jobId: string;
  readonly state: unknown;
}

/** A smaller copy of a photograph from the server, to compare with when there is no signal. */
export interface KeptPicture {
  readonly sha256: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

export interface KeptGuide {
  readonly token: string;
  readonly guide: Guide;
  readonly fetchedAt: string;
}

export interface KeptJob {
  readonly id: string;
  readonly date: string;
  readonly job: YardJob;
  readonly fetchedAt: string;
}

/** What is to be done to a vehicle that came back; what this device did since stands in its records. */
export interface KeptTurnaround {
  readonly id: string;
  readonly turnaround: Turnaround;
}

/** The device's own store. */
export class DeviceDatabase extends Dexie {
  readonly settings!: Table<{ readonly key: string; readonly value: unknown }, string>;
  readonly jobs!: Table<KeptJob, string>;
  readonly rounds!: Table<KeptRound, string>;
  readonly records!: Table<KeptRecord, string>;
  readonly photographs!: Table<KeptPhotograph, string>;
  readonly pictures!: Table<KeptPicture, string>;
  readonly guides!: Table<KeptGuide, string>;
  readonly turnarounds!: Table<KeptTurnaround, string>;

  constructor(name = "setfair-device") {
    super(name);
    this.version(1).stores({
      settings: "key",
      jobs: "id, date",
      rounds: "jobId",
      records: "id, [chain+seq], state",
      photographs: "sha256, chain, state",
      pictures: "sha256",
      guides: "token",
    });
    this.version(2).stores({ turnarounds: "id" });
  }
}
