import { type FormEvent, useState } from "react";
import { client } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { Button, NumberField, TickField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { useHireAct } from "../hire/use-hire.ts";

export interface WaitFormProps {
  readonly hireId: string;
  readonly wait: { readonly classes: readonly string[]; readonly flexDays: number } | null;
  /** classes of the depot's vehicles */
  readonly classes: readonly string[];
  readonly onDone: () => void;
}

/** What would do for one who waits: classes, and days that may give; or off the list. */
export function WaitForm({ hireId, wait, classes, onDone }: WaitFormProps) {
  const [wanted, setWanted] = useState<readonly string[]>(wait?.classes ?? []);
  const [flexDays, setFlexDays] = useState(wait?.flexDays ?? 0);
  const params = { path: { id: hireId } };
  const keep = useHireAct(
    () => take(client.PUT("/api/hires/{id}/waiting", { params, body: { classes: [...wanted], flexDays } })),
    onDone,
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
        value={flexDays}
        min={0}
        max={14}
        stepper
        onChange={(days) => setFlexDays(days ?? 0)}
      />
      <FailureNote failure={keep.error ?? drop.error} />
      <div className="row">
        <Button type="submit" look="main" isPending={keep.isPending}>
          {t("rates.keepWait")}
        </Button>
        {wait !== null && (
          <Button look="quiet" onPress={() => drop.mutate()} isPending={drop.isPending}>
            {t("rates.dropWait")}
          </Button>
        )}
      </div>
    </form>
  );
}
