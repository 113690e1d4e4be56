import { useMutation } from "@tanstack/react-query";
import { client, type Schemas } from "../../../api/client.ts";
import { problemAt, take } from "../../../api/failure.ts";
import { Button, ChoiceField, DateField, SelectField, TextField } from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import { useDraft } from "../../use-draft.ts";
import { notesChanged } from "./use-notes.ts";

const MOMENTS = ["none", "preparing", "counter", "return", "day"] as const;
const ANYBODY = "";
interface Draft {
  readonly text: string;
  readonly kind: "note" | "promise";
  readonly moment: (typeof MOMENTS)[number];
  readonly on: string;
  readonly ownerId: string;
}
const EMPTY: Draft = { text: "", kind: "note", moment: "counter", on: "", ownerId: ANYBODY };

interface FormProps {
  readonly id: string;
  readonly people: Schemas["HireNotes"]["people"];
}

/** A new note or promise. */
export function NewNoteForm({ id, people }: FormProps) {
  const draft = useDraft<Draft>(`note.${id}`, EMPTY);
  const { value, set } = draft;
  const add = useMutation({
    mutationFn: () => {
      const { text, kind, moment, on, ownerId } = value;
      const body = {
        text,
        kind,
        ...(moment === "none" ? {} : { moment }),
        ...(moment === "day" && on !== "" ? { on } : {}),
        ...(ownerId === ANYBODY ? {} : { ownerId }),
      };
      return take(client.POST("/api/hires/{id}/notes", { params: { path: { id } }, body }));
    },
    onSuccess: (notes) => {
      draft.done();
      notesChanged(id, notes);
    },
  });
  const at = (field: string) => problemAt(add.error, field);
  return (
    <fieldset className="fields">
      <legend>{t("notes.add")}</legend>
      <TextField
        label={t("notes.text")}
        lines={2}
        value={value.text}
        onChange={(text) => set({ ...value, text })}
        error={at("text")}
      />
      <div className="sheet-fields">
        <ChoiceField
          label={t("notes.kind")}
          value={value.kind}
          options={[
            { value: "note", label: t("notes.kind.note") },
            { value: "promise", label: t("notes.kind.promise") },
          ]}
          onChange={(kind) => set({ ...value, kind })}
        />
        <SelectField
          label={t("notes.moment")}
          value={value.moment}
          options={MOMENTS.map((moment) => ({ value: moment, label: t(`notes.moment.${moment}`) }))}
          onChange={(moment) => set({ ...value, moment })}
        />
        {value.moment === "day" && (
          <DateField
            label={t("notes.on")}
            value={value.on}
            onChange={(on) => set({ ...value, on })}
            error={at("on")}
          />
        )}
        <SelectField
          label={t("notes.owner")}
          value={value.ownerId}
          options={[
            { value: ANYBODY, label: t("notes.anybody") },
            ...people.map((person) => ({ value: person.id, label: person.name })),
          ]}
          onChange={(ownerId) => set({ ...value, ownerId })}
        />
      </div>
      <FailureNote failure={add.error} />
      <div>
        <Button
          look="main"
          onPress={() => add.mutate()}
          isPending={add.isPending}
          isDisabled={value.text.trim() === "" || (value.moment === "day" && value.on === "")}
        >
          {t("notes.add")}
        </Button>
      </div>
    </fieldset>
  );
}
