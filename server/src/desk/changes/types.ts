import type { z } from "zod";
import type { OpenHire } from "../../api/handlers/change-hire.ts";
import type { changeEffectsSchema, hireChangeSchema } from "../../api/schemas/changes.ts";
import type { JsonObject, Store } from "../../store/types.ts";
import { asDocument } from "../documents.ts";
import type { HireData } from "../hire-data.ts";

export type HireChange = z.output<typeof hireChangeSchema>;
export type ChangeKind = HireChange["kind"];
export type ChangeOf<Kind extends ChangeKind> = Extract<HireChange, { readonly kind: Kind }>;
export type Effects = z.input<typeof changeEffectsSchema>;
export type EffectLine = Effects["voided"][number];
export type EffectTask = Effects["toDo"][number];
export type Person = Effects["people"][number];

/** What a procedure is asked. */
export interface Ask<Kind extends ChangeKind> {
  readonly store: Store;
  readonly data: HireData;
  readonly change: ChangeOf<Kind>;
  readonly now: Date;
}
/** What it does: shown first, then written in one transaction, or not at all. */
export interface Plan {
  readonly effects: Omit<Effects, "kind" | "hash" | "canConfirm">;
  /** Writes it; what it answers is kept with the change. Refused where the vehicle is taken meanwhile. */
  write(hire: OpenHire): Promise<JsonObject>;
  /** the hire under which it is kept, where that is another one */
  readonly about?: string;
}
export type Planner<Kind extends ChangeKind> = (ask: Ask<Kind>) => Promise<Plan>;

export const NOTHING: Plan["effects"] = {
  stops: [],
  findings: [],
  voided: [],
  toDo: [],
  money: null,
  brief: null,
  people: [],
  says: [],
};

/** What is kept of a change. */
export interface ChangeDocument {
  readonly change: HireChange | null;
  readonly toDo: readonly EffectTask[];
  /** records of the hire that count no more */
  readonly voidedRecords?: readonly string[];
  /** overrides that count no more */
  readonly voidedOverrides?: readonly string[];
  readonly continuedBy?: { readonly hireId: string; readonly reference: string };
  readonly continues?: { readonly hireId: string; readonly reference: string };
}
/** The document of a change; empty once the hirer is erased. */
export const changeDocument = (document: JsonObject): ChangeDocument => ({
  change: null,
  toDo: [],
  ...asDocument<Partial<ChangeDocument>>(document),
});

export const line = (code: string, facts: EffectLine["facts"] = {}): EffectLine => ({ code, facts });
/** Something to do by a civil day or time. */
export const task = (
  data: Pick<HireData, "nowLocal">,
  code: string,
  by: string | null,
  facts: EffectLine["facts"] = {},
): EffectTask => ({ code, facts, by, late: by !== null && by < data.nowLocal.slice(0, by.length) });
