import { useQuery } from "@tanstack/react-query";
import { client } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { NumberField, SelectField } from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import type { Editing } from "./editing.ts";
import { OwnFields } from "./own-field.tsx";
import { DIMENSIONS, IDENTITY, KIND, SHELL } from "./vehicle-fields.ts";

const [STYLE, ...OTHERS] = KIND;
const CONSUMPTION = OTHERS.filter(({ path }) => path.startsWith("consumption"));
const WHAT = OTHERS.filter(({ path }) => !path.startsWith("consumption"));

/** The classes that the depot's terms price. */
function usePriceClasses(): readonly string[] {
  const terms = useQuery({ queryKey: ["terms"], queryFn: () => take(client.GET("/api/terms")) });
  return Object.keys(terms.data?.hire?.terms.seasons[0]?.nightPence ?? {});
}

/** Who it is, how big, and what the depot makes of it. */
export function VehicleStep({ editing }: { readonly editing: Editing }) {
  const { draft, set } = editing;
  const classes = usePriceClasses();
  return (
    <>
      <section className="card stack">
        <h3>{t("fleet.edit.whatItIs")}</h3>
        <OwnFields fields={IDENTITY} editing={editing} />
        <OwnFields fields={[...(STYLE === undefined ? [] : [STYLE]), ...WHAT]} editing={editing} />
      </section>
      <section className="card stack">
        <h3>{t("fleet.edit.size")}</h3>
        <OwnFields fields={DIMENSIONS} editing={editing} />
      </section>
      <details className="card">
        <summary className="fold">{t("fleet.edit.moreVehicle")}</summary>
        <div className="stack">
          <OwnFields fields={[...CONSUMPTION, ...SHELL]} editing={editing} />
          <div className="sheet-fields">
            {classes.length > 0 && (
              <SelectField
                label={t("fleet.edit.class")}
                value={draft.vehicleClass ?? classes[0] ?? null}
                options={classes.map((each) => ({ value: each, label: each }))}
                onChange={(vehicleClass) => set({ ...draft, vehicleClass })}
              />
            )}
            <NumberField
              label={t("fleet.edit.dogs")}
              value={draft.maxDogs ?? 0}
              onChange={(maxDogs) => set({ ...draft, maxDogs })}
            />
          </div>
        </div>
      </details>
    </>
  );
}
