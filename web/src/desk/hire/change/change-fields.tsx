import type { Schemas } from "../../../api/client.ts";
import {
  ChoiceField,
  DateField,
  DateTimeField,
  NumberField,
  SelectField,
  TextField,
  TickField,
} from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import { ClosedNote } from "../../enquiry/closed-note.tsx";
import type { HirePageData } from "../use-hire.ts";
import type { ChangeDraft, ChangeKind } from "./change-draft.ts";

export interface FieldsProps {
  readonly kind: ChangeKind;
  readonly page: HirePageData;
  readonly vehicles: Schemas["HireChanges"]["vehicles"];
  readonly draft: ChangeDraft;
  readonly set: (change: Partial<ChangeDraft>) => void;
  readonly problem: (path: string) => string | undefined;
}

const SKILLS = ["desk", "cleaner", "yard", "technician"] as const;
const CAUSES = ["unknown", "ours", "theirs"] as const;
const NOTICES = ["privateParking", "council", "police", "toll"] as const;

/** What one procedure asks. */
export function ChangeFields(props: FieldsProps) {
  switch (props.kind) {
    case "vehicle":
      return <VehicleFields {...props} />;
    case "extension":
    case "late":
    case "early":
      return <TimeFields {...props} />;
    case "party":
      return <PartyFields {...props} />;
    case "driverAbsent":
      return <DriverField {...props} />;
    case "teamIll":
      return (
        <ChoiceField
          label={t("changes.field.skill")}
          value={props.draft.skill}
          options={SKILLS.map((value) => ({ value, label: t(`changes.skill.${value}`) }))}
          onChange={(skill) => props.set({ skill })}
        />
      );
    case "noShow":
      return <Reason {...props} />;
    case "breakdown":
    case "accident":
      return <IncidentFields {...props} />;
    case "notice":
      return <NoticeFields {...props} />;
  }
}

function Reason({ draft, set, problem }: FieldsProps) {
  return (
    <TextField
      label={t("changes.field.reason")}
      value={draft.reason}
      onChange={(reason) => set({ reason })}
      error={problem("reason")}
    />
  );
}

function VehicleFields(props: FieldsProps) {
  const { vehicles, draft, set, problem } = props;
  const options = [...vehicles]
    .sort((a, b) => Number(b.free && b.fits) - Number(a.free && a.fits))
    .map(({ id, name, registration, free, fits }) => ({
      value: id,
      label: t("changes.field.vehicleOption", {
        name,
        registration,
        state: !fits ? "unfit" : free ? "free" : "taken",
      }),
    }));
  return (
    <>
      <SelectField
        label={t("changes.field.vehicle")}
        value={draft.vehicleId}
        options={options}
        onChange={(vehicleId) => set({ vehicleId })}
        error={problem("vehicleId")}
      />
      <Reason {...props} />
      <TickField value={draft.offTheRoad} onChange={(offTheRoad) => set({ offTheRoad })}>
        {t("changes.field.offTheRoad")}
      </TickField>
      {draft.offTheRoad && (
        <DateTimeField
          label={t("changes.field.offTheRoadTo")}
          value={draft.offTheRoadTo}
          onChange={(offTheRoadTo) => set({ offTheRoadTo })}
          error={problem("offTheRoadTo")}
        />
      )}
    </>
  );
}

function TimeFields({ kind, draft, set, problem }: FieldsProps) {
  return (
    <>
      <DateTimeField
        label={t(kind === "late" ? "changes.field.eta" : "changes.field.newReturn")}
        value={draft.to}
        onChange={(to) => set({ to })}
        error={problem("to") ?? problem("eta")}
      />
      <ClosedNote from="" to={draft.to} />
      {kind === "early" && (
        <NumberField
          label={t("changes.field.back")}
          note={t("changes.field.backNote")}
          value={draft.backPounds}
          min={0}
          onChange={(backPounds) => set({ backPounds })}
          error={problem("backPence")}
        />
      )}
    </>
  );
}

function PartyFields({ draft, set }: FieldsProps) {
  const fields = [
    ["adults", t("changes.field.adults")],
    ["children", t("changes.field.children")],
    ["dogs", t("changes.field.dogs")],
  ] as const;
  return (
    <div className="change-fields">
      {fields.map(([name, label]) => (
        <NumberField
          key={name}
          label={label}
          value={draft[name]}
          min={0}
          max={name === "dogs" ? 6 : 12}
          stepper
          onChange={(value) => set({ [name]: value })}
        />
      ))}
    </div>
  );
}

function DriverField({ page, draft, set, problem }: FieldsProps) {
  return (
    <SelectField
      label={t("changes.field.driver")}
      value={draft.driverId}
      options={page.driverNames.map(({ id, name }) => ({ value: id, label: name }))}
      onChange={(driverId) => set({ driverId })}
      error={problem("driverId")}
    />
  );
}

function IncidentFields({ kind, draft, set, problem }: FieldsProps) {
  return (
    <>
      <TextField
        label={t("changes.field.what")}
        lines={2}
        value={draft.what}
        onChange={(what) => set({ what })}
        error={problem("what")}
      />
      <div className="change-fields">
        <TextField
          label={t("changes.field.where")}
          value={draft.where}
          onChange={(where) => set({ where })}
          error={problem("where")}
        />
        <DateTimeField
          label={t("changes.field.at")}
          value={draft.at}
          onChange={(at) => set({ at })}
          error={problem("at")}
        />
      </div>
      <TickField value={draft.drivable} onChange={(drivable) => set({ drivable })}>
        {t("changes.field.drivable")}
      </TickField>
      <ChoiceField
        label={t("changes.field.cause")}
        value={draft.cause}
        options={CAUSES.map((value) => ({ value, label: t(`changes.cause.${value}`) }))}
        onChange={(cause) => set({ cause })}
      />
      <NumberField
        label={t("changes.field.nightsLost")}
        value={draft.nightsLost}
        min={0}
        max={365}
        onChange={(nightsLost) => set({ nightsLost })}
        error={problem("nightsLost")}
      />
      {kind === "accident" && <InsurerTold draft={draft} set={set} />}
    </>
  );
}

function InsurerTold({ draft, set }: Pick<FieldsProps, "draft" | "set">) {
  return (
    <>
      <TickField value={draft.insurerTold} onChange={(insurerTold) => set({ insurerTold })}>
        {t("changes.field.insurerTold")}
      </TickField>
      {draft.insurerTold && (
        <DateTimeField
          label={t("changes.field.insurerToldAt")}
          value={draft.insurerToldAt}
          onChange={(insurerToldAt) => set({ insurerToldAt })}
        />
      )}
    </>
  );
}

function NoticeFields({ draft, set, problem }: FieldsProps) {
  return (
    <>
      <ChoiceField
        label={t("changes.field.notice")}
        value={draft.notice}
        options={NOTICES.map((value) => ({ value, label: t(`changes.notice.${value}`) }))}
        onChange={(notice) => set({ notice })}
      />
      <div className="change-fields">
        <TextField
          label={t("changes.field.reference")}
          value={draft.reference}
          onChange={(reference) => set({ reference })}
        />
        <TextField
          label={t("changes.field.registration")}
          value={draft.registration}
          onChange={(registration) => set({ registration })}
        />
        <DateTimeField
          label={t("changes.field.minute")}
          value={draft.at}
          onChange={(at) => set({ at })}
          error={problem("at")}
        />
        <DateField
          label={t("changes.field.givenOn")}
          value={draft.givenOn}
          onChange={(givenOn) => set({ givenOn })}
          error={problem("givenOn")}
        />
      </div>
    </>
  );
}
