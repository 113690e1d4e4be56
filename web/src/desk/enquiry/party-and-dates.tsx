import { problemAt } from "../../api/failure.ts";
import { Button, ChoiceField, DateTimeField, NumberField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { ClosedNote } from "./closed-note.tsx";
import type { EnquiryDraft } from "./enquiry-draft.ts";

const EXPERIENCES = ["first", "some", "knowsThisVehicle"] as const;

export interface PartyAndDatesProps {
  readonly value: EnquiryDraft;
  readonly change: (part: Partial<EnquiryDraft>) => void;
  readonly failure: unknown;
}

const nightsText = (from: string, to: string): string | undefined => {
  if (from === "" || to === "" || to <= from) return undefined;
  const day = (text: string) => Date.parse(`${text.slice(0, 10)}T00:00:00Z`);
  return t("desk.enquiry.nights", { n: Math.round((day(to) - day(from)) / 86_400_000) });
};

/** Who travels and when. */
export function PartyAndDates({ value, change, failure }: PartyAndDatesProps) {
  const setAge = (place: number, age: number | null) =>
    change({ childAges: value.childAges.map((before, k) => (k === place ? (age ?? 0) : before)) });
  const setTo = (to: string) => change({ to });
  const setFrom = (from: string) => change({ from });
  return (
    <section className="card stack" aria-labelledby="party-title">
      <h2 id="party-title">{t("desk.enquiry.whoAndWhen")}</h2>
      <div className="sheet-fields">
        <DateTimeField
          label={t("desk.field.from")}
          value={value.from}
          onChange={setFrom}
          error={problemAt(failure, "from")}
        />
        <DateTimeField
          label={t("desk.field.to")}
          value={value.to}
          onChange={setTo}
          error={problemAt(failure, "to")}
          note={nightsText(value.from, value.to)}
        />
      </div>
      <ClosedNote from={value.from} to={value.to} />
      <div className="enquiry-counts">
        <NumberField
          label={t("desk.field.adults")}
          value={value.adults}
          min={1}
          max={9}
          stepper
          onChange={(n) => change({ adults: n ?? 1 })}
        />
        <NumberField
          label={t("desk.field.children")}
          value={value.childAges.length}
          min={0}
          max={7}
          stepper
          onChange={(n) =>
            change({ childAges: Array.from({ length: n ?? 0 }, (_, k) => value.childAges[k] ?? 8) })
          }
        />
        <NumberField
          label={t("desk.field.dogs")}
          value={value.dogs}
          min={0}
          max={6}
          stepper
          onChange={(n) => change({ dogs: n ?? 0 })}
        />
      </div>
      {value.childAges.length > 0 && (
        <div className="enquiry-ages">
          {value.childAges
            .map((_, place) => place)
            .map((place) => (
              <NumberField
                key={place}
                label={t("desk.field.ageOfChild", { n: place + 1 })}
                value={value.childAges[place] ?? 0}
                min={0}
                max={17}
                onChange={(next) => setAge(place, next)}
              />
            ))}
        </div>
      )}
      <ChoiceField
        label={t("desk.field.experience")}
        value={value.experience}
        onChange={(experience) => change({ experience })}
        options={EXPERIENCES.map((id) => ({ value: id, label: t(`experience.${id}`) }))}
      />
      {value.from !== "" && (
        <div className="row">
          <span className="quiet">{t("desk.enquiry.move")}</span>
          {[-1, 1].map((days) => (
            <Button
              key={days}
              look="quiet"
              onPress={() => change({ from: shift(value.from, days), to: shift(value.to, days) })}
            >
              {t("desk.enquiry.moveBy", { days })}
            </Button>
          ))}
        </div>
      )}
    </section>
  );
}

/** The same civil time some days later. */
function shift(local: string, days: number): string {
  if (local === "") return local;
  const moved = new Date(`${local}:00Z`);
  moved.setUTCDate(moved.getUTCDate() + days);
  return moved.toISOString().slice(0, 16);
}
