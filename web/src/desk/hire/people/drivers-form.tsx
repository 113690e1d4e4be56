import { client, type Schemas } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { Button } from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import { KeepRow } from "../../keep-row.tsx";
import { KeptMeanwhile } from "../../meanwhile/kept-meanwhile.tsx";
import { useGuardedDraft } from "../../meanwhile/use-guarded-draft.ts";
import { replaced } from "../../replaced.ts";
import { useSignedIn } from "../../session.ts";
import { keepPart } from "../keep-part.ts";
import { type PartProps, useHireAct } from "../use-hire.ts";
import { DriverFields } from "./driver-fields.tsx";

type Driver = Schemas["Driver"];

const newDriver = (isMain: boolean, name: string): Driver => ({
  id: `d${Date.now().toString(36)}`,
  name,
  born: "",
  main: isMain,
  licence: {
    issuedBy: "GB",
    firstCarEntitlement: "",
    categories: [{ category: "B", from: "", to: "" }],
    endorsements: [],
  },
  faultIncidents3y: 0,
  disqualified3y: false,
});

/** The named drivers and what their licences say. */
export function DriversForm({ page }: PartProps) {
  const { id } = page.hire;
  const { today } = useSignedIn();
  const draft = useGuardedDraft<readonly Driver[]>(`drivers.${id}`, {
    value: page.drivers ?? [],
    version: page.versions.drivers,
  });
  const { value, set, basedOn } = draft;
  const save = useHireAct(
    () =>
      keepPart(id, () =>
        take(
          client.PUT("/api/hires/{id}/drivers", {
            params: { path: { id }, query: { basedOn } },
            body: { drivers: [...value] },
          }),
        ),
      ),
    draft.done,
  );
  const setOne = (place: number, next: Driver | null) => set(replaced(value, place, next));
  const gates = page.glass?.gates.filter(({ gate }) => gate === "licence" || gate === "insurance") ?? [];
  const told = gates.flatMap(({ findings }) => findings.map(({ finding }) => finding));
  return (
    <section className="card sheet" aria-labelledby="drivers-title">
      <h2 id="drivers-title">{t("people.drivers", { n: value.length })}</h2>
      {value.length === 0 && <p className="quiet">{t("people.noDrivers")}</p>}
      {value.map((driver, k) => (
        <DriverFields
          key={driver.id}
          driver={driver}
          place={k}
          today={today}
          error={save.error}
          told={told.filter(({ about }) => about === driver.id)}
          onChange={(next) => setOne(k, next)}
          onRemove={() => setOne(k, null)}
        />
      ))}
      <div>
        <Button
          onPress={() =>
            set([...value, newDriver(value.length === 0, value.length === 0 ? page.customer.name : "")])
          }
          isDisabled={value.length >= 6}
        >
          {t("people.addDriver")}
        </Button>
      </div>
      <KeptMeanwhile draft={draft} failure={save.error} onSettled={save.reset} />
      <KeepRow label={t("people.saveDrivers")} save={save} draft={draft} />
    </section>
  );
}
