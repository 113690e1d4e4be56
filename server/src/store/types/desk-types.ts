/** What the desk decides, notes and changes, its dated rules, links and audit. */
import type { JsonObject, Page, Paged } from "../basic-types.ts";

/** Kept for ever: who let a finding pass, on which basis and why. */
export interface OverrideRow {
  readonly id: string;
  readonly hireId: string;
  readonly findingCode: string;
  /** Finding.about, "" where it has none */
  readonly about: string;
  readonly basis: "cover" | "policy";
  readonly reason: string;
  readonly by: string;
  readonly at: string;
}
/** What changed about a hire after it was booked; the document is the desk's (`desk/changes`), empty once the hirer is erased. */
export interface ChangeRow {
  readonly id: string;
  readonly hireId: string;
  readonly kind: string;
  readonly document: JsonObject;
  readonly by: string;
  readonly at: string;
}
/** A promise to the hirer with a day, or a plain note. */
export interface NoteRow {
  readonly id: string;
  readonly hireId: string;
  readonly kind: "note" | "promise";
  readonly text: string;
  /** the moment before the keys, at them, at the return, or a day (`dueAt`); null: it stands on the hire only */
  readonly moment: NoteMoment | null;
  /** who sees to it, by the account's id; null: whoever is there */
  readonly owner: string | null;
  readonly dueAt: string | null;
  readonly doneAt: string | null;
  readonly doneBy: string | null;
  readonly by: string;
  readonly at: string;
}
export const NOTE_MOMENTS = ["preparing", "counter", "return", "day"] as const;
export type NoteMoment = (typeof NOTE_MOMENTS)[number];
/** What a depot did to a dated rule (engine: RuleChange); `document` is that change without its kind. */
export interface RuleChangeRow {
  readonly id: string;
  readonly ruleId: string;
  readonly kind: "correct" | "confirm" | "withdraw";
  readonly document: JsonObject;
  readonly by: string;
  readonly at: string;
}
export interface HirerLinkRow {
  readonly id: string;
  readonly hireId: string;
  readonly expiresAt: string;
  readonly revokedAt: string | null;
  readonly createdAt: string;
}
export interface AuditRow {
  readonly id: string;
  readonly at: string;
  /** account id, "hirer" or "system" */
  readonly by: string;
  readonly act: string;
  readonly about: string;
  readonly document: JsonObject;
}

/** Part of the depot's `Store`. */
export interface DeskStores {
  readonly overrides: {
    add(override: Omit<OverrideRow, "id" | "at">): Promise<OverrideRow>;
    ofHire(hireId: string): Promise<readonly OverrideRow[]>;
    ofHires(hireIds: readonly string[]): Promise<readonly OverrideRow[]>;
  };
  readonly changes: {
    add(change: Omit<ChangeRow, "id" | "at">): Promise<ChangeRow>;
    get(id: string): Promise<ChangeRow | null>;
    /** Of several hires, oldest first. */
    ofHires(hireIds: readonly string[]): Promise<readonly ChangeRow[]>;
  };
  readonly notes: {
    add(note: Omit<NoteRow, "id" | "at" | "doneAt" | "doneBy">): Promise<NoteRow>;
    get(id: string): Promise<NoteRow | null>;
    /** Ticks it, once. */
    done(id: string, by: string): Promise<boolean>;
    /** Takes a tick back. */
    reopen(id: string): Promise<boolean>;
    ofHire(hireId: string): Promise<readonly NoteRow[]>;
    /** Notes and promises that have a moment and no tick, by due time. */
    open(): Promise<readonly NoteRow[]>;
  };
  /** What this depot did to the dated rules, in the order of writing; never changed. */
  readonly rules: {
    add(change: Omit<RuleChangeRow, "id" | "at">): Promise<RuleChangeRow>;
    all(): Promise<readonly RuleChangeRow[]>;
  };
  readonly links: {
    /** `tokenHash` from `auth`: the token itself is never stored. */
    create(link: { hireId: string; tokenHash: string; expiresAt: string }): Promise<HirerLinkRow>;
    ofHire(hireId: string): Promise<readonly HirerLinkRow[]>;
    revoke(id: string): Promise<boolean>;
  };
  readonly licences: {
    /** Kept encrypted; erased at `eraseAt`, by a job that this adds. */
    put(licence: { hireId: string; driverId: string; number: string; eraseAt: string }): Promise<void>;
    /** Reading is written to the audit. */
    read(hireId: string, driverId: string, by: string): Promise<string | null>;
    /** Erases one at once; false where there was none. */
    erase(hireId: string, driverId: string): Promise<boolean>;
    eraseDue(): Promise<number>;
  };
  readonly audit: {
    add(entry: { by: string; act: string; about: string; document?: JsonObject }): Promise<void>;
    /** Newest first; `about` keeps to one thing, e.g. a hire's id. */
    list(filter?: Page & { readonly about?: string }): Promise<Paged<AuditRow>>;
  };
}
