import { Button, NumberField, TextField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { replaced } from "../replaced.ts";
import { MonthDayField } from "./month-day-field.tsx";
import { RowList } from "./row-list.tsx";
import { MONEY_FORMAT, type PieceProps, penceOf, pounds, raised, type Season } from "./terms-draft.ts";

/** The seasons in their order: where two hold a day, the upper one gives its price. */
export function SeasonFields({
  value,
  change,
  classes,
}: PieceProps & { readonly classes: readonly string[] }) {
  const { seasons } = value;
  const set = (next: readonly Season[]) => change({ seasons: [...next] });
  const add = () => {
    const nightPence = Object.fromEntries(classes.map((id) => [id, seasons[0]?.nightPence[id] ?? 0]));
    const made = { id: "", spans: [{ from: "01-01", to: "01-31" }], nightPence, minimumNights: 1 };
    set([made, ...seasons]);
  };
  return (
    <section className="card stack" aria-labelledby="seasons-title">
      <div className="row spread">
        <h2 id="seasons-title">{t("rates.seasons")}</h2>
        <Button onPress={add}>{t("rates.addSeason")}</Button>
      </div>
      <p className="quiet">{t("rates.upperWins")}</p>
      {seasons.map((season, place) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a season is its place in the order while its name is being typed
        <SeasonCard key={place} season={season} place={place} classes={classes} seasons={seasons} set={set} />
      ))}
    </section>
  );
}

interface SeasonCardProps {
  readonly season: Season;
  readonly place: number;
  readonly classes: readonly string[];
  readonly seasons: readonly Season[];
  readonly set: (next: readonly Season[]) => void;
}

function SeasonCard({ season, place, classes, seasons, set }: SeasonCardProps) {
  const change = (part: Partial<Season>) => set(replaced(seasons, place, { ...season, ...part }));
  const name = season.id === "" ? t("rates.newSeason") : season.id;
  return (
    <fieldset className="fields season">
      <legend>{t("rates.seasonAt", { place: place + 1, name })}</legend>
      <div className="sheet-fields">
        <TextField label={t("rates.seasonName")} value={season.id} onChange={(id) => change({ id })} />
        <NumberField
          label={t("rates.minimumNights")}
          value={season.minimumNights}
          min={1}
          max={60}
          stepper
          onChange={(nights) => change({ minimumNights: nights ?? 1 })}
        />
      </div>
      <Spans season={season} change={change} />
      <div className="class-prices">
        {classes.map((id) => (
          <NumberField
            key={id}
            label={t("rates.nightOf", { what: t("rates.class", { id }) })}
            unit="£"
            value={season.nightPence[id] === undefined ? null : pounds(season.nightPence[id] ?? 0)}
            min={0}
            max={10_000}
            format={MONEY_FORMAT}
            onChange={(amount) => change({ nightPence: { ...season.nightPence, [id]: penceOf(amount) } })}
          />
        ))}
      </div>
      <div className="row">
        {place > 0 && (
          <Button look="quiet" onPress={() => set(raised(seasons, place))}>
            {t("rates.raise", { name })}
          </Button>
        )}
        {seasons.length > 1 && (
          <Button look="quiet" onPress={() => set(replaced(seasons, place, null))}>
            {t("rates.remove", { name })}
          </Button>
        )}
      </div>
    </fieldset>
  );
}

interface SpansProps {
  readonly season: Season;
  readonly change: (part: Partial<Season>) => void;
}

function Spans({ season, change }: SpansProps) {
  const { spans } = season;
  return (
    <RowList
      rows={spans}
      onChange={(next) => change({ spans: next })}
      fresh={{ from: "01-01", to: "01-31" }}
      addText={t("rates.addSpan")}
      removeText={() => (spans.length > 1 ? t("rates.removeSpan") : null)}
      fields={({ from, to }, set) => (
        <>
          <MonthDayField label={t("rates.from")} value={from} onChange={(next) => set({ from: next })} />
          <MonthDayField label={t("rates.to")} value={to} onChange={(next) => set({ to: next })} />
        </>
      )}
    />
  );
}
