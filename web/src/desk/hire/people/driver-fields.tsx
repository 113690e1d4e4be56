import type { Schemas } from "../../../api/client.ts";
import { problemAt } from "../../../api/failure.ts";
import {
  Button,
  DateField,
  FindingsList,
  NumberField,
  SelectField,
  TextField,
  TickField,
} from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import { replaced } from "../../replaced.ts";

type Driver = Schemas["Driver"];
type Licence = Driver["licence"];
const ISSUERS = ["GB", "NI", "EEA", "other"] as const;
const CATEGORIES = ["B", "BE", "C1", "C1E", "C"] as const;

export interface DriverFieldsProps {
  readonly driver: Driver;
  readonly place: number;
  readonly today: string;
  readonly error: unknown;
  readonly told: readonly Schemas["Finding"][];
  readonly onChange: (driver: Driver) => void;
  readonly onRemove: () => void;
}

/** One driver: person, entitlement, endorsements, and when the licence was checked. */
export function DriverFields(props: DriverFieldsProps) {
  const { driver, place, told, onChange, onRemove } = props;
  const at = (field: string) => problemAt(props.error, `drivers.${place}.${field}`);
  const setLicence = (part: Partial<Licence>) =>
    onChange({ ...driver, licence: { ...driver.licence, ...part } });
  /** a day that may be missing: emptied, it is */
  const setDay = (name: "checkedOn" | "photocardTo" | "visitingSince", day: string) => {
    const { [name]: _before, ...licence } = driver.licence;
    onChange({ ...driver, licence: day === "" ? licence : { ...licence, [name]: day } });
  };
  return (
    <div className="line-box">
      <div className="sheet-fields">
        <TextField
          label={t("people.driverName")}
          value={driver.name}
          onChange={(name) => onChange({ ...driver, name })}
          error={at("name")}
        />
        <DateField
          label={t("people.born")}
          value={driver.born}
          onChange={(born) => onChange({ ...driver, born })}
          error={at("born")}
        />
        <SelectField
          label={t("people.issuedBy")}
          value={driver.licence.issuedBy}
          options={ISSUERS.map((id) => ({ value: id, label: t(`issuer.${id}`) }))}
          onChange={(issuedBy) => setLicence({ issuedBy })}
        />
        <DateField
          label={t("people.firstCar")}
          value={driver.licence.firstCarEntitlement}
          onChange={(firstCarEntitlement) => setLicence({ firstCarEntitlement })}
          error={at("licence.firstCarEntitlement")}
        />
        <DateField
          label={t("people.photocardTo")}
          note={t("people.photocardNote")}
          value={driver.licence.photocardTo ?? ""}
          onChange={(day) => setDay("photocardTo", day)}
          error={at("licence.photocardTo")}
        />
      </div>
      {driver.licence.issuedBy === "other" && (
        <DateField
          label={t("people.visitingSince")}
          value={driver.licence.visitingSince ?? ""}
          onChange={(day) => setDay("visitingSince", day)}
          error={at("licence.visitingSince")}
        />
      )}
      <Categories {...props} setLicence={setLicence} />
      <Endorsements {...props} setLicence={setLicence} />
      <div className="sheet-fields">
        <NumberField
          label={t("people.incidents")}
          min={0}
          max={20}
          stepper
          value={driver.faultIncidents3y}
          onChange={(n) => onChange({ ...driver, faultIncidents3y: n ?? 0 })}
          error={at("faultIncidents3y")}
        />
        <div className="row">
          <TickField
            value={driver.disqualified3y}
            onChange={(disqualified3y) => onChange({ ...driver, disqualified3y })}
          >
            {t("people.disqualified")}
          </TickField>
          <TickField value={driver.main} onChange={(main) => onChange({ ...driver, main })}>
            {t("people.main")}
          </TickField>
        </div>
        <DateField
          label={t("people.checkedOn")}
          note={t("people.checkedNote")}
          value={driver.licence.checkedOn ?? ""}
          onChange={(day) => setDay("checkedOn", day)}
          error={at("licence.checkedOn")}
        />
      </div>
      <div className="row">
        <Button onPress={() => setLicence({ checkedOn: props.today })}>{t("people.checkedToday")}</Button>
        <Button look="quiet" onPress={onRemove}>
          {t("people.removeDriver", { name: driver.name === "" ? String(place + 1) : driver.name })}
        </Button>
      </div>
      {told.length > 0 && <FindingsList findings={told} />}
    </div>
  );
}

type LicenceProps = DriverFieldsProps & { readonly setLicence: (part: Partial<Licence>) => void };

function Categories({ driver, place, error, setLicence }: LicenceProps) {
  const { categories } = driver.licence;
  const setOne = (k: number, part: Partial<(typeof categories)[number]> | null) =>
    setLicence({
      categories: replaced(categories, k, part === null ? null : { ...categories[k]!, ...part }),
    });
  return (
    <>
      {categories.map((entry, k) => {
        const at = (field: string) => problemAt(error, `drivers.${place}.licence.categories.${k}.${field}`);
        return (
          <div key={entry.category} className="sheet-fields">
            <SelectField
              label={t("people.category")}
              value={entry.category}
              options={CATEGORIES.map((id) => ({ value: id, label: id }))}
              onChange={(category) => setOne(k, { category })}
            />
            <DateField
              label={t("people.categoryFrom")}
              value={entry.from}
              onChange={(from) => setOne(k, { from })}
              error={at("from")}
            />
            <DateField
              label={t("people.categoryTo")}
              value={entry.to}
              onChange={(to) => setOne(k, { to })}
              error={at("to")}
            />
            <div className="row">
              <Button look="quiet" onPress={() => setOne(k, null)}>
                {t("people.removeCategory", { category: entry.category })}
              </Button>
            </div>
          </div>
        );
      })}
      <div>
        <Button
          look="quiet"
          onPress={() => {
            const next = CATEGORIES.find((id) => !categories.some(({ category }) => category === id));
            if (next !== undefined)
              setLicence({ categories: [...categories, { category: next, from: "", to: "" }] });
          }}
        >
          {t("people.addCategory")}
        </Button>
      </div>
    </>
  );
}

function Endorsements({ driver, place, error, setLicence }: LicenceProps) {
  const { endorsements } = driver.licence;
  const setOne = (k: number, part: Partial<(typeof endorsements)[number]> | null) =>
    setLicence({
      endorsements: replaced(endorsements, k, part === null ? null : { ...endorsements[k]!, ...part }),
    });
  return (
    <>
      {endorsements.map((entry, k) => {
        const at = (field: string) => problemAt(error, `drivers.${place}.licence.endorsements.${k}.${field}`);
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: the same code may stand twice on a licence
          <div key={k} className="sheet-fields">
            <TextField
              label={t("people.code")}
              value={entry.code}
              onChange={(code) => setOne(k, { code: code.toUpperCase() })}
              error={at("code")}
            />
            <DateField
              label={t("people.offence")}
              value={entry.offence}
              onChange={(offence) => setOne(k, { offence })}
              error={at("offence")}
            />
            <NumberField
              label={t("people.points")}
              min={0}
              max={12}
              stepper
              value={entry.points}
              onChange={(n) => setOne(k, { points: n ?? 0 })}
              error={at("points")}
            />
            <div className="row">
              <Button look="quiet" onPress={() => setOne(k, null)}>
                {t("people.removeEndorsement", { code: entry.code })}
              </Button>
            </div>
          </div>
        );
      })}
      <div>
        <Button
          look="quiet"
          onPress={() =>
            setLicence({ endorsements: [...endorsements, { code: "", offence: "", points: 3 }] })
          }
        >
          {t("people.addEndorsement")}
        </Button>
      </div>
    </>
  );
}
