import { client, type Schemas } from "../../../api/client.ts";
import { problemAt, take } from "../../../api/failure.ts";
import { Button, ChoiceField, NumberField, TextField } from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import { KeepRow } from "../../keep-row.tsx";
import { KeptMeanwhile } from "../../meanwhile/kept-meanwhile.tsx";
import { useGuardedDraft } from "../../meanwhile/use-guarded-draft.ts";
import { replaced } from "../../replaced.ts";
import { keepPart } from "../keep-part.ts";
import { type PartProps, useHireAct } from "../use-hire.ts";

type Party = Schemas["Party"];
type Traveller = Party["travellers"][number];

type Detail = "name" | "ageYears" | "heightCm" | "massKg";

/** A traveller with one detail changed; a detail that was emptied is left out. */
function withField(traveller: Traveller, name: Detail, value: string | number | null): Traveller {
  const details = { ...traveller, [name]: value === "" || value === null ? undefined : value };
  return Object.fromEntries(Object.entries(details).filter(([, each]) => each !== undefined)) as Traveller;
}

/** Everyone who travels, with what seats, belts and masses need to know. */
export function PartyForm({ page }: PartProps) {
  const { id } = page.hire;
  const draft = useGuardedDraft<Party>(`party.${id}`, { value: page.party, version: page.versions.party });
  const { value, set, basedOn } = draft;
  const save = useHireAct(
    () =>
      keepPart(id, () =>
        take(
          client.PUT("/api/hires/{id}/party", { params: { path: { id }, query: { basedOn } }, body: value }),
        ),
      ),
    draft.done,
  );
  const setOne = (place: number, next: Traveller | null) =>
    set({
      ...value,
      travellers: replaced(value.travellers, place, next),
    });
  return (
    <section className="card sheet" aria-labelledby="party-title">
      <h2 id="party-title">{t("people.party", { n: value.travellers.length })}</h2>
      {value.travellers.map((traveller, k) => (
        <TravellerFields
          key={traveller.id}
          traveller={traveller}
          place={k}
          error={save.error}
          onChange={(next) => setOne(k, next)}
          onRemove={value.travellers.length > 1 ? () => setOne(k, null) : undefined}
        />
      ))}
      <div className="row">
        <Button
          onPress={() =>
            set({
              ...value,
              travellers: [...value.travellers, { id: `t${Date.now().toString(36)}`, kind: "adult" }],
            })
          }
        >
          {t("people.addTraveller")}
        </Button>
        <NumberField
          label={t("desk.field.dogs")}
          value={value.dogs}
          min={0}
          max={6}
          stepper
          onChange={(n) => set({ ...value, dogs: n ?? 0 })}
        />
      </div>
      <KeptMeanwhile draft={draft} failure={save.error} onSettled={save.reset} />
      <KeepRow label={t("people.saveParty")} save={save} draft={draft} />
    </section>
  );
}

interface TravellerFieldsProps {
  readonly traveller: Traveller;
  readonly place: number;
  readonly error: unknown;
  readonly onChange: (traveller: Traveller) => void;
  readonly onRemove: (() => void) | undefined;
}

function TravellerFields({ traveller, place, error, onChange, onRemove }: TravellerFieldsProps) {
  const at = (field: string) => problemAt(error, `travellers.${place}.${field}`);
  return (
    <div className="line-box">
      <div className="sheet-fields">
        <TextField
          label={t("people.name")}
          value={traveller.name ?? ""}
          onChange={(name) => onChange(withField(traveller, "name", name))}
          error={at("name")}
        />
        <ChoiceField
          label={t("people.kind")}
          value={traveller.kind}
          options={[
            { value: "adult", label: t("people.adult") },
            { value: "child", label: t("people.child") },
          ]}
          onChange={(kind) => onChange({ ...traveller, kind })}
        />
        <NumberField
          label={t("people.age")}
          min={0}
          max={120}
          value={traveller.ageYears ?? null}
          onChange={(n) => onChange(withField(traveller, "ageYears", n))}
          error={at("ageYears")}
        />
        {traveller.kind === "child" && (
          <NumberField
            label={t("people.height")}
            unit="cm"
            min={40}
            max={230}
            value={traveller.heightCm ?? null}
            onChange={(n) => onChange(withField(traveller, "heightCm", n))}
            error={at("heightCm")}
          />
        )}
        <NumberField
          label={t("people.mass")}
          unit="kg"
          min={2}
          max={250}
          value={traveller.massKg ?? null}
          note={t("people.massNote")}
          onChange={(n) => onChange(withField(traveller, "massKg", n))}
          error={at("massKg")}
        />
      </div>
      {onRemove !== undefined && (
        <div>
          <Button look="quiet" onPress={onRemove}>
            {t("people.removeTraveller", { name: traveller.name ?? String(place + 1) })}
          </Button>
        </div>
      )}
    </div>
  );
}
