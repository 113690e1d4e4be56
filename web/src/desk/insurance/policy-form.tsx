import { COUNTRIES_KNOWN } from "@setfair/engine";
import type { Schemas } from "../../api/client.ts";
import { problemAt } from "../../api/failure.ts";
import { Button, ChoiceField, DateField, NumberField, TextField, TickField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { replaced } from "../replaced.ts";

export type Policy = Schemas["InsurancePolicy"];
type Outcome = Policy["age"]["outcome"];

interface FormProps {
  readonly policy: Policy;
  readonly set: (policy: Policy) => void;
  readonly error: unknown;
}

/** Every field of the criteria, each limit with what follows outside it. */
export function PolicyForm({ policy, set, error }: FormProps) {
  const problem = (field: string) =>
    problemAt(error, `insurance.${field}`) ?? problemAt(error, `policy.${field}`);
  const number = (
    label: string,
    field: string,
    value: number,
    put: (value: number) => void,
    unit?: string,
  ) => (
    <NumberField
      label={label}
      value={value}
      min={0}
      onChange={(n) => put(n ?? 0)}
      error={problem(field)}
      {...(unit === undefined ? {} : { unit })}
    />
  );
  const { age, yearsHeld, convictions, faultIncidents3y } = policy;
  return (
    <>
      <div className="sheet-fields">
        <TextField
          label={t("insurance.id")}
          value={policy.id}
          onChange={(id) => set({ ...policy, id })}
          error={problem("id")}
        />
        <DateField
          label={t("insurance.validFrom")}
          value={policy.validFrom}
          onChange={(validFrom) => set({ ...policy, validFrom })}
          error={problem("validFrom")}
        />
        <DateField
          label={t("insurance.validTo")}
          value={policy.validTo}
          onChange={(validTo) => set({ ...policy, validTo })}
          error={problem("validTo")}
        />
      </div>
      <Group
        title={t("insurance.age")}
        outcome={age.outcome}
        onOutcome={(outcome) => set({ ...policy, age: { ...age, outcome } })}
      >
        {number(t("insurance.ageMin"), "age.min", age.min, (min) => set({ ...policy, age: { ...age, min } }))}
        {number(t("insurance.ageMax"), "age.max", age.max, (max) => set({ ...policy, age: { ...age, max } }))}
      </Group>
      <Group
        title={t("insurance.held")}
        outcome={yearsHeld.outcome}
        onOutcome={(outcome) => set({ ...policy, yearsHeld: { ...yearsHeld, outcome } })}
      >
        {number(
          t("insurance.yearsHeld"),
          "yearsHeld.min",
          yearsHeld.min,
          (min) => set({ ...policy, yearsHeld: { ...yearsHeld, min } }),
          t("insurance.years"),
        )}
      </Group>
      <Group
        title={t("insurance.convictions")}
        outcome={convictions.outcome}
        onOutcome={(outcome) => set({ ...policy, convictions: { ...convictions, outcome } })}
      >
        {(
          [
            ["withinYears", "insurance.within"],
            ["maxCount", "insurance.maxCount"],
            ["maxPointsEach", "insurance.maxEach"],
            ["maxPointsTotal", "insurance.maxTotal"],
          ] as const
        ).map(([field, label]) => (
          <NumberField
            key={field}
            label={t(label)}
            value={convictions[field]}
            min={0}
            onChange={(n) => set({ ...policy, convictions: { ...convictions, [field]: n ?? 0 } })}
            error={problem(`convictions.${field}`)}
          />
        ))}
      </Group>
      <Codes policy={policy} set={set} error={error} />
      <Group
        title={t("insurance.faults")}
        outcome={faultIncidents3y.outcome}
        onOutcome={(outcome) => set({ ...policy, faultIncidents3y: { ...faultIncidents3y, outcome } })}
      >
        {number(t("insurance.most"), "faultIncidents3y.max", faultIncidents3y.max, (max) =>
          set({ ...policy, faultIncidents3y: { ...faultIncidents3y, max } }),
        )}
      </Group>
      <Group
        title={t("insurance.disqualified")}
        outcome={policy.disqualified3y}
        onOutcome={(disqualified3y) => set({ ...policy, disqualified3y })}
      />
      <Journey policy={policy} set={set} error={error} />
    </>
  );
}

interface GroupProps {
  readonly title: string;
  readonly outcome: Outcome;
  readonly onOutcome: (outcome: Outcome) => void;
  readonly children?: React.ReactNode;
}

/** Limits that belong together, and whether the insurer is asked outside them or it is refused. */
function Group({ title, outcome, onOutcome, children }: GroupProps) {
  return (
    <fieldset className="fields">
      <legend>{title}</legend>
      <div className="sheet-fields">
        {children}
        <OutcomeField outcome={outcome} onChange={onOutcome} />
      </div>
    </fieldset>
  );
}

function OutcomeField({
  outcome,
  onChange,
}: {
  readonly outcome: Outcome;
  readonly onChange: (outcome: Outcome) => void;
}) {
  return (
    <ChoiceField
      label={t("insurance.outside")}
      value={outcome}
      options={[
        { value: "refer", label: t("insurance.outcome.refer") },
        { value: "refuse", label: t("insurance.outcome.refuse") },
      ]}
      onChange={onChange}
    />
  );
}

function Codes({ policy, set, error }: FormProps) {
  const { codes } = policy;
  const setOne = (place: number, next: Policy["codes"][number] | null) =>
    set({
      ...policy,
      codes: replaced(codes, place, next),
    });
  return (
    <fieldset className="fields">
      <legend>{t("insurance.codes")}</legend>
      {codes.map((code, k) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a code may stand twice with other years
        <div key={k} className="sheet-fields">
          <TextField
            label={t("insurance.prefix")}
            value={code.prefix}
            onChange={(prefix) => setOne(k, { ...code, prefix: prefix.toUpperCase() })}
            error={problemAt(error, `insurance.codes.${k}.prefix`)}
          />
          <NumberField
            label={t("insurance.within")}
            unit={t("insurance.years")}
            min={1}
            max={11}
            value={code.withinYears}
            onChange={(n) => setOne(k, { ...code, withinYears: n ?? 1 })}
          />
          <OutcomeField outcome={code.outcome} onChange={(outcome) => setOne(k, { ...code, outcome })} />
          <Button look="quiet" onPress={() => setOne(k, null)}>
            {t("insurance.removeCode", { prefix: code.prefix })}
          </Button>
        </div>
      ))}
      <div>
        <Button
          look="quiet"
          onPress={() =>
            set({ ...policy, codes: [...codes, { prefix: "", withinYears: 5, outcome: "refer" }] })
          }
        >
          {t("insurance.addCode")}
        </Button>
      </div>
    </fieldset>
  );
}

function Journey({ policy, set, error }: FormProps) {
  const toggle = (country: string, on: boolean) =>
    set({
      ...policy,
      countries: on ? [...policy.countries, country] : policy.countries.filter((each) => each !== country),
    });
  return (
    <fieldset className="fields">
      <legend>{t("insurance.limits")}</legend>
      <div className="sheet-fields">
        <NumberField
          label={t("insurance.maxMam")}
          unit="kg"
          min={1000}
          max={7500}
          value={policy.maxMamKg}
          onChange={(n) => set({ ...policy, maxMamKg: n ?? 3500 })}
          error={problemAt(error, "insurance.maxMamKg")}
        />
        <NumberField
          label={t("insurance.nights")}
          min={0}
          max={365}
          value={policy.maxNightsAbroad}
          onChange={(n) => set({ ...policy, maxNightsAbroad: n ?? 0 })}
          error={problemAt(error, "insurance.maxNightsAbroad")}
        />
      </div>
      <fieldset className="fields">
        <legend>{t("insurance.countries")}</legend>
        <div className="ticks">
          {COUNTRIES_KNOWN.map((country) => (
            <TickField
              key={country}
              value={policy.countries.includes(country)}
              onChange={(on) => toggle(country, on)}
            >
              {t("country.name", { country })}
            </TickField>
          ))}
        </div>
      </fieldset>
    </fieldset>
  );
}
