import { type FormEvent, type ReactNode, useState } from "react";
import { problemAt } from "../../../api/failure.ts";
import {
  Button,
  ChoiceField,
  DateField,
  DateTimeField,
  Dialog,
  NumberField,
  SelectField,
  TextField,
} from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import { useDraft } from "../../use-draft.ts";
import { PickField } from "./pick-field.tsx";
import { ShotsField } from "./shots-field.tsx";
import { type SettlementState, useSettlementAct } from "./use-settlement.ts";

/** One thing that a dialog asks; `id` is the field of the body, so that its problem is shown beside it. */
export type Asked = {
  readonly id: string;
  readonly label: string;
  readonly note?: string;
  /** may be left empty */
  readonly optional?: boolean;
} & (
  | { readonly kind: "text"; readonly lines?: number; readonly start?: string }
  /** pounds on screen, pence in the answer */
  | { readonly kind: "pounds"; readonly start?: number; readonly max?: number }
  | { readonly kind: "number"; readonly unit?: string; readonly start?: number; readonly max?: number }
  | { readonly kind: "date" | "dateTime"; readonly start?: string }
  | { readonly kind: "photographs" }
  /** some of these photographs */
  | { readonly kind: "pick"; readonly of: readonly { readonly sha256: string; readonly label: string }[] }
  | {
      readonly kind: "choice" | "select";
      readonly options: readonly { readonly value: string; readonly label: string }[];
      readonly start?: string;
    }
);
type Value = string | number | null | readonly string[];
type Values = Readonly<Record<string, Value>>;

/** What was entered, by the kind that was asked for. */
export interface Entered {
  text(id: string): string;
  number(id: string): number;
  /** whole pence of a sum in pounds */
  pence(id: string): number;
  photographs(id: string): string[];
}

const entered = (values: Values): Entered => ({
  text: (id) => String(values[id] ?? "").trim(),
  number: (id) => Number(values[id] ?? 0),
  pence: (id) => Math.round(Number(values[id] ?? 0) * 100),
  photographs: (id) => {
    const value = values[id];
    return typeof value === "object" && value !== null ? [...value] : [];
  },
});

const startOf = (asked: Asked): Value => {
  if (asked.kind === "photographs" || asked.kind === "pick") return [];
  if (asked.kind === "pounds" || asked.kind === "number") return asked.start ?? null;
  return asked.start ?? "";
};
const isEmpty = (value: Value | undefined): boolean =>
  value === undefined ||
  value === null ||
  (typeof value === "number" ? Number.isNaN(value) : value.length === 0) ||
  (typeof value === "string" && value.trim() === "");

export interface AskDialogProps {
  readonly hireId: string;
  /** under which what was typed is kept until it was sent */
  readonly draft: string;
  readonly title: string;
  readonly lead?: ReactNode;
  readonly fields: readonly Asked[];
  readonly act: string;
  readonly send: (entered: Entered) => Promise<SettlementState>;
  readonly onClose: () => void;
}

/** Asks for a few things and enters them on the settlement; nothing typed is lost by an error or a reload. */
export function AskDialog({ hireId, draft, title, lead, fields, act, send, onClose }: AskDialogProps) {
  const [start] = useState(() => Object.fromEntries(fields.map((asked) => [asked.id, startOf(asked)])));
  const { value, set, done } = useDraft<Values>(`settling.${hireId}.${draft}`, start);
  const save = useSettlementAct(
    hireId,
    () => send(entered(value)),
    () => {
      done();
      onClose();
    },
  );
  const submit = (event: FormEvent) => {
    event.preventDefault();
    save.mutate();
  };
  const missing = fields.filter(({ id, optional }) => optional !== true && isEmpty(value[id]));
  return (
    <Dialog title={title} isOpen wide onClose={onClose}>
      <form className="stack" onSubmit={submit} noValidate>
        {lead !== undefined && <p className="quiet">{lead}</p>}
        <div className="sheet-fields">
          {fields.map((asked) => (
            <AskedField
              key={asked.id}
              hireId={hireId}
              asked={asked}
              value={value[asked.id] ?? startOf(asked)}
              error={problemAt(save.error, asked.id)}
              onChange={(next) => set({ ...value, [asked.id]: next })}
            />
          ))}
        </div>
        <FailureNote failure={save.error} shown={fields.map(({ id }) => id)} />
        {missing.length > 0 && (
          <p className="quiet" role="status">
            {t("settling.still", { list: missing.map(({ label }) => label).join(", ") })}
          </p>
        )}
        <div className="row row-end">
          <Button type="submit" look="main" isPending={save.isPending} isDisabled={missing.length > 0}>
            {act}
          </Button>
        </div>
      </form>
    </Dialog>
  );
}

interface FieldProps {
  readonly hireId: string;
  readonly asked: Asked;
  readonly value: Value;
  readonly error: string | undefined;
  readonly onChange: (value: Value) => void;
}

const POUNDS = { minimumFractionDigits: 2, maximumFractionDigits: 2 } as const;

function AskedField({ hireId, asked, value, error, onChange }: FieldProps) {
  const { label, note } = asked;
  const words = { label, note, error };
  const text = typeof value === "string" ? value : "";
  switch (asked.kind) {
    case "pounds":
    case "number":
      return (
        <NumberField
          {...words}
          {...(asked.kind === "pounds" ? { unit: "£", format: POUNDS } : {})}
          {...(asked.kind === "number" && asked.unit !== undefined ? { unit: asked.unit } : {})}
          min={0}
          max={asked.max ?? 100_000}
          value={typeof value === "number" ? value : null}
          onChange={onChange}
        />
      );
    case "date":
      return <DateField {...words} value={text} onChange={onChange} />;
    case "dateTime":
      return <DateTimeField {...words} value={text} onChange={onChange} />;
    case "photographs":
      return (
        <ShotsField
          hireId={hireId}
          {...words}
          value={typeof value === "object" && value !== null ? value : []}
          onChange={onChange}
        />
      );
    case "pick":
      return (
        <PickField
          {...words}
          of={asked.of}
          value={typeof value === "object" && value !== null ? value : []}
          onChange={onChange}
        />
      );
    case "choice":
      return <ChoiceField {...words} value={text} options={asked.options} onChange={onChange} />;
    case "select":
      return <SelectField {...words} value={text} options={asked.options} onChange={onChange} />;
    default:
      return (
        <TextField
          {...words}
          value={text}
          onChange={onChange}
          {...(asked.lines === undefined ? {} : { lines: asked.lines })}
        />
      );
  }
}
