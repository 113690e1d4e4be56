import { CROSSINGS } from "@setfair/engine";
import { problemAt } from "../../../api/failure.ts";
import { Button, DateField, SelectField, TickField } from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import type { Abroad, AbroadFormProps } from "./abroad-form.ts";

type Crossing = Abroad["crossings"][number];

/** Ferries and tunnels of the route, or the word that there are none. */
export function Crossings({ value, set, error, depart }: AbroadFormProps & { readonly depart: string }) {
  const setOne = (place: number, next: Crossing | null) =>
    set({
      ...value,
      crossings: value.crossings.flatMap((each, k) => (k !== place ? [each] : next === null ? [] : [next])),
    });
  const add = () =>
    set({ ...value, noCrossing: false, crossings: [...value.crossings, { kind: "ferry", on: depart }] });
  return (
    <fieldset className="fields">
      <legend>{t("abroad.crossing")}</legend>
      {value.crossings.map((crossing, k) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: crossings have no id of their own; their place is what they are
        <div key={k} className="sheet-fields">
          <SelectField
            label={t("abroad.kind")}
            value={crossing.kind}
            options={CROSSINGS.map((kind) => ({ value: kind, label: t(`abroad.kind.${kind}`) }))}
            onChange={(kind) => setOne(k, { ...crossing, kind })}
          />
          <DateField
            label={t("abroad.on")}
            value={crossing.on}
            onChange={(on) => setOne(k, { ...crossing, on })}
            error={problemAt(error, `crossings.${k}.on`)}
          />
          <Button look="quiet" onPress={() => setOne(k, null)}>
            {t("abroad.removeCrossing", { kind: t(`abroad.kind.${crossing.kind}`) })}
          </Button>
        </div>
      ))}
      <div className="row">
        <Button onPress={add}>{t("abroad.addCrossing")}</Button>
        {value.crossings.length === 0 && (
          <TickField value={value.noCrossing} onChange={(noCrossing) => set({ ...value, noCrossing })}>
            {t("abroad.noCrossing")}
          </TickField>
        )}
      </div>
    </fieldset>
  );
}
