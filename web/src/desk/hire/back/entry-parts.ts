import { client, type Schemas } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { moneyText, say } from "../../../parts/words.ts";
import type { Asked } from "./ask-dialog.tsx";
import { type Entry, numberIn, type SettlementState } from "./use-settlement.ts";

type Note = Schemas["SettlementNote"];
export interface CardProps {
  readonly hireId: string;
  readonly state: SettlementState;
}

export const ofKind = ({ entries }: SettlementState, kind: Entry["kind"]): readonly Entry[] =>
  entries.filter((entry) => entry.kind === kind);
export const pounds = (entry: Entry, name: string): string =>
  moneyText({ currency: "GBP", pence: numberIn(entry, name) });
export const sendNote = (hireId: string, body: Note) =>
  take(client.POST("/api/hires/{id}/settlement/notes", { params: { path: { id: hireId } }, body }));
export const joined = (...parts: readonly string[]): string =>
  parts.filter((part) => part !== "").join(" · ");

/** A field under its usual words; what its kind needs beside them is given by the caller. */
export const field = (id: string, asked: Partial<Asked> & Pick<Asked, "kind">): Asked =>
  ({ id, label: say(`settling.field.${id}`), ...asked }) as Asked; // each caller gives what its kind asks for
