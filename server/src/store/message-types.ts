/** Messages to hirers, calendar links and listed vehicles, as the rest of the server sees them. */
import type { JsonObject, Page, Paged, Scope } from "./basic-types.ts";

export const MESSAGE_KINDS = ["booking", "preHire", "dayBefore", "returnReminder", "statement"] as const;
export type MessageKind = (typeof MESSAGE_KINDS)[number];

export const MESSAGE_LANGUAGES = ["en", "de", "fr"] as const;
export type MessageLanguage = (typeof MESSAGE_LANGUAGES)[number];

/**
 * waiting: for its moment, for the mail server, or for the next try · sending: a try is under way · sent: the mail
 * server took it · failed: refused, or given up · bounced: came back, told by a person · unsure: the server was
 * stopped in the middle, so it may have gone out · withdrawn: by a person before it went
 */
export const MESSAGE_STATES = [
  "waiting",
  "sending",
  "sent",
  "failed",
  "bounced",
  "unsure",
  "withdrawn",
] as const;
export type MessageState = (typeof MESSAGE_STATES)[number];

export interface MessageRow {
  readonly id: string;
  readonly hireId: string;
  readonly kind: MessageKind;
  readonly language: MessageLanguage;
  readonly to: string;
  readonly subject: string;
  readonly body: string;
  /** names of papers, made when it is sent */
  readonly attachments: readonly string[];
  readonly state: MessageState;
  readonly dueAt: string;
  /** why it failed, came back or is tried again; what the mail server said, to the letter */
  readonly reason: string | null;
  readonly sentAt: string | null;
  readonly response: string | null;
  readonly attempts: number;
  readonly by: string;
  readonly at: string;
}
export interface NewMessage {
  readonly hireId: string;
  readonly kind: MessageKind;
  readonly language: MessageLanguage;
  readonly to: string;
  readonly subject: string;
  readonly body: string;
  readonly attachments: readonly string[];
  readonly dueAt: string;
  /** a second message with this key in the depot is not kept, whatever became of the first */
  readonly dedupeKey: string;
  readonly by: string;
}
export interface MessageChange {
  readonly state: MessageState;
  readonly reason?: string | null;
  readonly sentAt?: string;
  readonly response?: string;
  readonly attempts?: number;
}

export interface MessagesStore {
  /** Null where there is one with this key already. */
  add(message: NewMessage): Promise<MessageRow | null>;
  get(id: string): Promise<MessageRow | null>;
  byKey(dedupeKey: string): Promise<MessageRow | null>;
  /** Newest first. */
  list(filter?: Page & { states?: readonly MessageState[]; hireId?: string }): Promise<Paged<MessageRow>>;
  /** Which keys are there already. */
  knownKeys(keys: readonly string[]): Promise<ReadonlySet<string>>;
  /** Moves it on from one of these states; false where it was not in one: somebody else was there first. */
  move(id: string, from: readonly MessageState[], to: MessageChange): Promise<boolean>;
  /** Adds the job that sends it at `runAt`, unless it has one. */
  addJob(id: string, runAt: string): Promise<boolean>;
  /** Its job ended without sending it: another may be added. */
  dropJob(id: string): Promise<void>;
  /** Those that wait without a job. */
  withoutJob(limit: number): Promise<readonly MessageRow[]>;
  settings(): Promise<{ readonly document: JsonObject; readonly version: number }>;
  /** `version` 0 where nothing was kept yet. False where somebody else kept something meanwhile. */
  putSettings(document: JsonObject, version: number): Promise<boolean>;
}

export const FEED_KINDS = ["depot", "vehicle", "hire"] as const;
export interface FeedRow {
  readonly id: string;
  readonly kind: (typeof FEED_KINDS)[number];
  /** a vehicle's or a hire's id; "" for the depot */
  readonly about: string;
  /** hirers' names stand in it */
  readonly withNames: boolean;
  readonly by: string;
  readonly at: string;
  readonly revokedAt: string | null;
}
export interface FeedsStore {
  create(feed: Omit<FeedRow, "id" | "at" | "revokedAt"> & { tokenHash: string }): Promise<FeedRow>;
  /** Newest first, revoked ones too. */
  list(): Promise<readonly FeedRow[]>;
  /** False where there is none, or it is revoked already. */
  revoke(id: string): Promise<boolean>;
  /** Which events of calendar files are blocks of this vehicle already. */
  knownEvents(vehicleId: string): Promise<ReadonlySet<string>>;
  rememberEvent(event: { vehicleId: string; uid: string; blockId: string }): Promise<void>;
}
export interface FeedAnswer {
  readonly scope: Scope;
  readonly feed: FeedRow;
}

export interface VehicleDraftRow {
  readonly id: string;
  readonly registration: string;
  readonly document: JsonObject;
  readonly by: string;
  readonly at: string;
}
export interface VehicleDraftsStore {
  add(draft: Omit<VehicleDraftRow, "id" | "at">): Promise<VehicleDraftRow>;
  list(): Promise<readonly VehicleDraftRow[]>;
  remove(id: string): Promise<boolean>;
}
