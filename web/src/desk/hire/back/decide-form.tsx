import { useMutation } from "@tanstack/react-query";
import { client, type Schemas } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { Button, ChoiceField, SelectField, TextField } from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import { DropDraft } from "../../keep-row.tsx";
import { KeptMeanwhile } from "../../meanwhile/kept-meanwhile.tsx";
import { sendOrRead, useGuardedDraft } from "../../meanwhile/use-guarded-draft.ts";
import { queries } from "../../query-client.ts";

type Entry = Schemas["Difference"];
type MarkClass = Schemas["MarkClass"];
type Todo = NonNullable<Entry["todo"]>;

const CLASSES: readonly MarkClass[] = ["existing", "fairWear", "ours", "hirer", "unknown"];
const TODOS: readonly (Todo | "look")[] = ["look", "repair", "orderPart", "nothing"];

interface DecideFormProps {
  readonly hireId: string;
  readonly entry: Entry;
  readonly onClose: () => void;
}

interface Draft {
  readonly made: MarkClass;
  readonly reason: string;
  readonly incident: string;
  readonly todo: Todo | "look";
}

/** What it is, on what evidence, which incident it came of, and what is to be done before the next hire. */
export function DecideForm({ hireId, entry, onClose }: DecideFormProps) {
  const draft = useGuardedDraft<Draft>(`class.${entry.id}`, {
    value: {
      made: entry.class ?? "unknown",
      reason: entry.classReason ?? "",
      incident: entry.incident ?? "",
      todo: entry.todo ?? "look",
    },
    version: entry.version,
  });
  const { value, set, basedOn } = draft;
  const decide = useMutation({
    mutationFn: () => {
      const made = {
        id: entry.id,
        class: value.made,
        reason: value.reason.trim(),
        incident: value.incident.trim() === "" ? null : value.incident.trim(),
        todo: value.todo === "look" ? null : value.todo,
        basedOn: Number(basedOn),
      };
      const params = { path: { id: hireId } };
      return sendOrRead(
        () => take(client.PUT("/api/hires/{id}/classes", { params, body: { classes: [made] } })),
        () => queries.invalidateQueries({ queryKey: ["differences", hireId] }),
      );
    },
    onSuccess: (after) => {
      draft.done();
      queries.setQueryData(["differences", hireId], after);
      for (const kind of ["hire", "settlement"]) void queries.invalidateQueries({ queryKey: [kind, hireId] });
      onClose();
    },
  });
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
      <KeptMeanwhile draft={draft} failure={decide.error} onSettled={decide.reset} />
      <div className="row">
        <Button
          look="main"
          isDisabled={value.reason.trim() === ""}
          isPending={decide.isPending}
          onPress={() => decide.mutate()}
        >
          {t("back.keep")}
        </Button>
        <DropDraft draft={draft} />
      </div>
    </div>
  );
}
