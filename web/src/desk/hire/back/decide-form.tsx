import type { Schemas } from "../../../api/client.ts";
import { Button, ChoiceField, SelectField, TextField } from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import { useDraft } from "../../use-draft.ts";

type Entry = Schemas["Difference"];
type MarkClass = Schemas["MarkClass"];
type Todo = NonNullable<Entry["todo"]>;
/** What the desk decides of one difference. */
export type Decided = Omit<Schemas["SetClasses"]["classes"][number], "id">;

const CLASSES: readonly MarkClass[] = ["existing", "fairWear", "ours", "hirer", "unknown"];
const TODOS: readonly (Todo | "look")[] = ["look", "repair", "orderPart", "nothing"];

interface DecideFormProps {
  readonly entry: Entry;
  readonly isPending: boolean;
  readonly onDecide: (decided: Decided) => void;
  readonly onClose: () => void;
}

interface Draft {
  readonly made: MarkClass;
  readonly reason: string;
  readonly incident: string;
  readonly todo: Todo | "look";
}

/** What it is, on what evidence, which incident it came of, and what is to be done before the next hire. */
export function DecideForm({ entry, isPending, onDecide, onClose }: DecideFormProps) {
  const draft = useDraft<Draft>(`class.${entry.id}`, {
    made: entry.class ?? "unknown",
    reason: entry.classReason ?? "",
    incident: entry.incident ?? "",
    todo: entry.todo ?? "look",
  });
  const { value, set } = draft;
  const keep = () => {
    onDecide({
      class: value.made,
      reason: value.reason.trim(),
      incident: value.incident.trim() === "" ? null : value.incident.trim(),
      todo: value.todo === "look" ? null : value.todo,
    });
    draft.done();
    onClose();
  };
  return (
    <div className="stack-tight">
      <ChoiceField
        label={t("back.whose")}
        note={t("back.unknownNote")}
        value={value.made}
        options={CLASSES.map((id) => ({ value: id, label: t(`markClass.${id}`) }))}
        onChange={(made) => set({ ...value, made })}
      />
      <div className="sheet-fields">
        <TextField
          label={t("back.reason")}
          value={value.reason}
          onChange={(reason) => set({ ...value, reason })}
        />
        {value.made === "hirer" && (
          <TextField
            label={t("settling.incident")}
            note={t("settling.incidentNote")}
            value={value.incident}
            onChange={(incident) => set({ ...value, incident })}
          />
        )}
        <SelectField
          label={t("settling.todo")}
          note={t("settling.todoNote")}
          value={value.todo}
          options={TODOS.map((id) => ({ value: id, label: t(`settling.todo.${id}`) }))}
          onChange={(todo) => set({ ...value, todo })}
        />
      </div>
      <div>
        <Button look="main" isDisabled={value.reason.trim() === ""} isPending={isPending} onPress={keep}>
          {t("back.keep")}
        </Button>
      </div>
    </div>
  );
}
