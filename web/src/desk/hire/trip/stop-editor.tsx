import { isOffered } from "@setfair/engine";
import { problemAt } from "../../../api/failure.ts";
import {
  Button,
  DateTimeField,
  NumberField,
  SelectField,
  TextField,
  TickField,
} from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import { PlaceField } from "./place-field.tsx";
import type { TripStop } from "./trip-draft.ts";

const POSTS = ["0", "4", "6", "10", "16"] as const;
const OFFERS = ["freshWater", "wasteDrain", "cassettePoint", "lpgExchange"] as const;
const ACTS = [
  "plugIn",
  "fillWater",
  "emptyWaste",
  "emptyCassette",
  "exchangeLpg",
  "fillFuel",
  "fillDef",
] as const;

export interface StopEditorProps {
  readonly stop: TripStop;
  readonly place: number;
  /** named, but with the point of the place before it */
  readonly isAtPlaceBefore: boolean;
  readonly error: unknown;
  readonly onChange: (stop: TripStop) => void;
  readonly onRemove: () => void;
}

function withHeight(
  { elevationM: _, ...place }: TripStop["place"],
  metres: number | null,
): TripStop["place"] {
  return metres === null ? place : { ...place, elevationM: metres };
}

function PlaceFields({ stop, place, error, onChange }: Omit<StopEditorProps, "onRemove">) {
  const at = (field: string) => problemAt(error, `stops.${place}.${field}`);
  const setPlace = (part: Partial<TripStop["place"]>) =>
    onChange({ ...stop, place: { ...stop.place, ...part }, drive: { distanceKm: 0, minutes: 0 } });
  return (
    <div className="sheet-fields">
      <PlaceField
        place={stop.place}
        onName={(name) => onChange({ ...stop, place: { ...stop.place, name } })}
        onPlace={setPlace}
        error={at("place.name")}
      />
      <NumberField
        label={t("trip.latitude")}
        unit="°"
        min={34}
        max={72}
        step={0.001}
        value={stop.place.latitudeDeg}
        onChange={(latitudeDeg) => setPlace({ latitudeDeg: latitudeDeg ?? stop.place.latitudeDeg })}
        error={at("place.latitudeDeg")}
      />
      <NumberField
        label={t("trip.longitude")}
        unit="°"
        min={-25}
        max={40}
        step={0.001}
        value={stop.place.longitudeDeg}
        onChange={(longitudeDeg) => setPlace({ longitudeDeg: longitudeDeg ?? stop.place.longitudeDeg })}
        error={at("place.longitudeDeg")}
      />
      <TextField
        label={t("trip.country")}
        value={stop.place.country}
        onChange={(country) =>
          onChange({ ...stop, place: { ...stop.place, country: country.toUpperCase().slice(0, 2) } })
        }
        error={at("place.country")}
      />
      <NumberField
        label={t("trip.elevation")}
        unit="m"
        min={-10}
        max={3000}
        value={stop.place.elevationM ?? null}
        onChange={(metres) => onChange({ ...stop, place: withHeight(stop.place, metres) })}
        error={at("place.elevationM")}
      />
    </div>
  );
}

function WhenFields({ stop, place, error, onChange }: Omit<StopEditorProps, "onRemove">) {
  const at = (field: string) => problemAt(error, `stops.${place}.${field}`);
  return (
    <div className="sheet-fields">
      <DateTimeField
        label={t("trip.arrive")}
        value={stop.arrive}
        onChange={(arrive) => onChange({ ...stop, arrive })}
        error={at("arrive")}
      />
      <DateTimeField
        label={t("trip.leave")}
        value={stop.leave}
        onChange={(leave) => onChange({ ...stop, leave })}
        error={at("leave")}
      />
      <NumberField
        label={t("trip.km")}
        unit="km"
        min={0}
        max={2000}
        value={stop.drive.distanceKm}
        onChange={(km) => onChange({ ...stop, drive: { ...stop.drive, distanceKm: km ?? 0 } })}
        error={at("drive.distanceKm")}
      />
      <NumberField
        label={t("trip.minutes")}
        unit="min"
        min={0}
        max={1440}
        value={stop.drive.minutes}
        onChange={(minutes) => onChange({ ...stop, drive: { ...stop.drive, minutes: minutes ?? 0 } })}
        error={at("drive.minutes")}
      />
    </div>
  );
}

/** One stop: where, when, what the pitch offers, and what is done there. */
export function StopEditor(props: StopEditorProps) {
  const { stop, place, onChange, onRemove } = props;
  const setPitch = (part: Partial<TripStop["pitch"]>) => {
    const next = { ...stop, pitch: { ...stop.pitch, ...part } };
    onChange({ ...next, acts: next.acts.filter((act) => isOffered(next, act)) });
  };
  const setAct = (act: (typeof ACTS)[number], isOn: boolean) =>
    onChange({ ...stop, acts: isOn ? [...stop.acts, act] : stop.acts.filter((each) => each !== act) });
  return (
    <fieldset className="line-box plain-set">
      <legend className="row spread">
        <strong>{t("trip.stop", { n: place + 1, name: stop.place.name })}</strong>
      </legend>
      <PlaceFields {...props} />
      {props.isAtPlaceBefore && (
        <p className="caution" role="status">
          {t(place === 0 ? "place.atDepot" : "place.atStopBefore")}
        </p>
      )}
      <WhenFields {...props} />
      <div className="row">
        <SelectField
          label={t("trip.post")}
          value={String(stop.pitch.postAmperes) as (typeof POSTS)[number]}
          options={POSTS.map((amperes) => ({
            value: amperes,
            label: t("trip.postAmperes", { n: Number(amperes) }),
          }))}
          onChange={(amperes) => setPitch({ postAmperes: Number(amperes) })}
        />
        {OFFERS.map((offer) => (
          <TickField key={offer} value={stop.pitch[offer]} onChange={(isOn) => setPitch({ [offer]: isOn })}>
            {t(`pitch.${offer}`)}
          </TickField>
        ))}
      </div>
      <div className="row">
        <span className="quiet">{t("trip.actsHere")}</span>
        {ACTS.map((act) => (
          <TickField
            key={act}
            value={stop.acts.includes(act)}
            disabled={!isOffered(stop, act)}
            onChange={(isOn) => setAct(act, isOn)}
          >
            {t(`act.${act}`)}
          </TickField>
        ))}
      </div>
      <div>
        <Button look="quiet" onPress={onRemove}>
          {t("trip.removeStop")}
        </Button>
      </div>
    </fieldset>
  );
}
