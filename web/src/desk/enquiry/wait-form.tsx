import type { FormEvent } from "react";
import { client } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { Button, NumberField, TickField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { keepPart } from "../hire/keep-part.ts";
import { useHireAct } from "../hire/use-hire.ts";
import { DropDraft } from "../keep-row.tsx";
import { KeptMeanwhile } from "../meanwhile/kept-meanwhile.tsx";
import { useGuardedDraft } from "../meanwhile/use-guarded-draft.ts";
import { queries } from "../query-client.ts";

export interface WaitFormProps {
  readonly hireId: string;
  readonly wait: { readonly classes: readonly string[]; readonly flexDays: number } | null;
  /** of what would do, as it was read */
  readonly version: number;
  /** classes of the depot's vehicles */
  readonly classes: readonly string[];
  readonly onDone: () => void;
}

interface Wanted {
  readonly classes: readonly string[];
  readonly flexDays: number;
}

/** What would do for one who waits: classes, and days that may give; or off the list. */
export function WaitForm({ hireId, wait, version, classes, onDone }: WaitFormProps) {
  const draft = useGuardedDraft<Wanted>(`wait.${hireId}`, {
    value: { classes: wait?.classes ?? [], flexDays: wait?.flexDays ?? 0 },
    version,
  });
  const { value, set, basedOn } = draft;
  const wanted = value.classes;
  const setWanted = (next: readonly string[]) => set({ ...value, classes: next });
  const params = { path: { id: hireId } };
  const keep = useHireAct(
    () =>
      keepPart(hireId, () =>
        take(
          client.PUT("/api/hires/{id}/waiting", {
            params: { ...params, query: { basedOn } },
            body: { classes: [...wanted], flexDays: value.flexDays },
          }),
        ),
      ).finally(() => void queries.invalidateQueries({ queryKey: ["enquiries"] })),
    () => {
      draft.done();
      onDone();
    },
  );
  const drop = useHireAct(() => take(client.DELETE("/api/hires/{id}/waiting", { params })), onDone);
  const send = (event: FormEvent) => {
    event.preventDefault();
    keep.mutate();
  };
  return (
    <form className="stack" onSubmit={send} noValidate>
      <fieldset className="fields">
        <legend>{t("rates.classesThatDo")}</legend>
        <p className="quiet">{t("rates.noneIsAny")}</p>
        <div className="ticks">
          {classes.map((each) => (
            <TickField
              key={each}
              value={wanted.includes(each)}
              onChange={(isIn) =>
                setWanted(isIn ? [...wanted, each] : wanted.filter((other) => other !== each))
              }
            >
              {t("rates.class", { id: each })}
            </TickField>
          ))}
        </div>
      </fieldset>
      <NumberField
        label={t("rates.flexDays")}
        value={value.flexDays}
        min={0}
        max={14}
        stepper
        onChange={(days) => set({ ...value, flexDays: days ?? 0 })}
      />
      <KeptMeanwhile draft={draft} failure={keep.error} onSettled={keep.reset} />
      <FailureNote failure={drop.error} />
      <div className="row">
        <Button type="submit" look="main" isPending={keep.isPending}>
          {t("rates.keepWait")}
        </Button>
        {wait !== null && (
          <Button look="quiet" onPress={() => drop.mutate()} isPending={drop.isPending}>
            {t("rates.dropWait")}
          </Button>
        )}
        <DropDraft draft={draft} />
      </div>
    </form>
  );
}
