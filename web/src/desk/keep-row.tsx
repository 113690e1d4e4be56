import { Button } from "../parts/index.ts";
import { t } from "../parts/words.ts";

interface KeepRowProps {
  /** what keeping is called here */
  readonly label: string;
  readonly save: { readonly isPending: boolean; readonly mutate: () => void };
  readonly draft: { readonly isDirty: boolean; readonly done: () => void };
  /** typed, but not fit to be sent yet */
  readonly isUnfit?: boolean;
}

/** Drops what was typed, where something was. */
export function DropDraft({ draft }: Pick<KeepRowProps, "draft">) {
  if (!draft.isDirty) return null;
  return (
    <Button look="quiet" onPress={draft.done}>
      {t("desk.dropChanges")}
    </Button>
  );
}

/** Under a form whose draft is kept in this tab: keep it, or drop what was typed. */
export function KeepRow({ label, save, draft, isUnfit = false }: KeepRowProps) {
  return (
    <div className="row">
      <Button
        look="main"
        onPress={() => save.mutate()}
        isPending={save.isPending}
        isDisabled={isUnfit || !draft.isDirty}
      >
        {save.isPending ? t("desk.sending") : label}
      </Button>
      <DropDraft draft={draft} />
    </div>
  );
}
