import { useMutation } from "@tanstack/react-query";
import { type FormEvent, useState } from "react";
import { client, type Schemas } from "../../../api/client.ts";
import { problemAt, take } from "../../../api/failure.ts";
import { Button, Dialog } from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import { queries } from "../../query-client.ts";
import { useSignedIn } from "../../session.ts";
import { type HirePageData, useHireAct } from "../use-hire.ts";
import {
  type ChangeDraft,
  type ChangeKind,
  changeOf,
  civilNow,
  type HireChange,
  newDraft,
} from "./change-draft.ts";
import { ChangeFields } from "./change-fields.tsx";
import { type Effects, EffectsView } from "./effects-view.tsx";

export interface ChangeSheetProps {
  readonly kind: ChangeKind;
  readonly page: HirePageData;
  readonly vehicles: Schemas["HireChanges"]["vehicles"];
  readonly onClose: () => void;
}

interface Looked {
  readonly change: HireChange;
  readonly effects: Effects;
}

const SHOWN = [
  "vehicleId",
  "offTheRoadTo",
  "to",
  "eta",
  "backPence",
  "driverId",
  "at",
  "givenOn",
  "nightsLost",
  "what",
  "where",
  "reason",
];

function useChange({ kind, page, onClose }: ChangeSheetProps) {
  const { id } = page.hire;
  const { depot } = useSignedIn();
  const [draft, setDraft] = useState(() => newDraft(page, civilNow(depot.timeZone)));
  const look = useMutation({
    mutationFn: async (change: HireChange): Promise<Looked> => ({
      change,
      effects: await take(
        client.POST("/api/hires/{id}/changes/look", { params: { path: { id } }, body: change }),
      ),
    }),
  });
  const confirm = useHireAct(
    ({ change, effects }: Looked) =>
      take(
        client.POST("/api/hires/{id}/changes", {
          params: { path: { id } },
          body: { change, seen: effects.hash },
        }),
      ),
    () => {
      for (const key of ["changes", "diary", "notes"]) void queries.invalidateQueries({ queryKey: [key] });
      onClose();
    },
  );
  const set = (change: Partial<ChangeDraft>) => {
    setDraft((before) => ({ ...before, ...change }));
    confirm.reset();
  };
  const askWith = (next: ChangeDraft) => {
    const change = changeOf(kind, next, page);
    if (change !== null) look.mutate(change);
  };
  return { draft, set, look, confirm, askWith, ready: changeOf(kind, draft, page) !== null };
}

/** One procedure: what it asks, then what it does, then one act. Leaving it leaves nothing behind. */
export function ChangeSheet(props: ChangeSheetProps) {
  const { kind, page, vehicles, onClose } = props;
  const { draft, set, look, confirm, askWith, ready } = useChange(props);
  const looked = look.data;
  const submit = (event: FormEvent) => {
    event.preventDefault();
    askWith(draft);
  };
  const move = (hireId: string, vehicleId: string) => {
    const moves = [...draft.moves.filter((each) => each.hireId !== hireId), { hireId, vehicleId }];
    set({ moves });
    askWith({ ...draft, moves });
  };
  const canMove = kind === "extension" || kind === "late";
  return (
    <Dialog title={t(`changes.kind.${kind}`)} isOpen onClose={onClose} wide>
      {looked === undefined ? (
        <form className="stack" onSubmit={submit} noValidate>
          <ChangeFields
            kind={kind}
            page={page}
            vehicles={vehicles}
            draft={draft}
            set={set}
            problem={(path) => problemAt(look.error, path)}
          />
          <FailureNote failure={look.error} shown={SHOWN} />
          <Button type="submit" look="main" isPending={look.isPending} isDisabled={!ready}>
            {t(look.isPending ? "changes.looking" : "changes.look")}
          </Button>
        </form>
      ) : (
        <div className="stack">
          <EffectsView effects={looked.effects} onMove={canMove ? move : undefined} />
          <FailureNote failure={confirm.error} onAgain={() => askWith(draft)} />
          <div className="row row-end change-acts">
            <Button
              look="quiet"
              onPress={() => {
                set({ moves: [] });
                look.reset();
              }}
            >
              {t("changes.again")}
            </Button>
            {looked.effects.canConfirm && (
              <Button look="main" isPending={confirm.isPending} onPress={() => confirm.mutate(looked)}>
                {t(confirm.isPending ? "changes.confirming" : "changes.confirm")}
              </Button>
            )}
          </div>
        </div>
      )}
    </Dialog>
  );
}
