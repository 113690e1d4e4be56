import { CROSSINGS } from "@setfair/engine";
import { problemAt } from "../../../api/failure.ts";
import { Button, DateField, SelectField, TextField, TickField } from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import { replaced } from "../../replaced.ts";
import { useSignedIn } from "../../session.ts";
import type { Abroad, AbroadFormProps } from "./abroad-form.ts";

type Crossing = Abroad["crossings"][number];

/** Zones of the ports on the way from Great Britain and Ireland to the countries of the rules. */
const PORT_ZONES = [
  "Europe/London",
  "Europe/Dublin",
  "Europe/Paris",
  "Europe/Brussels",
  "Europe/Amsterdam",
  "Europe/Berlin",
  "Europe/Copenhagen",
  "Europe/Oslo",
  "Europe/Stockholm",
  "Europe/Rome",
  "Europe/Madrid",
  "Europe/Lisbon",
] as const;

const withZone = ({ zone: _, ...crossing }: Crossing, zone: string | undefined): Crossing =>
  zone === undefined ? crossing : { ...crossing, zone };
/** Without a time there is no zone either. */
const withAt = (crossing: Crossing, at: string): Crossing =>
  at === "" ? { kind: crossing.kind, on: crossing.on } : { ...crossing, at };

/** Ferries and tunnels of the route, or the word that there are none. */
export function Crossings({ value, set, error, depart }: AbroadFormProps & { readonly depart: string }) {
  const { timeZone } = useSignedIn().depot;
  const setOne = (place: number, next: Crossing | null) =>
    set({
      ...value,
      crossings: replaced(value.crossings, place, next),
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
          <TextField
            label={t("depot.crossingAt")}
            note={t("depot.crossingAtNote")}
            value={crossing.at ?? ""}
            onChange={(at) => setOne(k, withAt(crossing, at.trim()))}
            error={problemAt(error, `crossings.${k}.at`)}
          />
          {crossing.at !== undefined && (
            <SelectField
              label={t("depot.crossingZone")}
              value={crossing.zone ?? timeZone}
              options={[...new Set([timeZone, ...PORT_ZONES])].map((zone) => ({
                value: zone,
                label: t("depot.zoneOf", { city: (zone.split("/").at(-1) ?? zone).replaceAll("_", " ") }),
              }))}
              onChange={(zone) => setOne(k, withZone(crossing, zone === timeZone ? undefined : zone))}
              error={problemAt(error, `crossings.${k}.zone`)}
            />
          )}
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
