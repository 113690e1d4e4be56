import { type TripForecast, tellTrip } from "@setfair/engine";
import type { UseMutationResult } from "@tanstack/react-query";
import { useState } from "react";
import { client } from "../../../api/client.ts";
import { problemAt, take } from "../../../api/failure.ts";
import { Button, DateTimeField, NumberField } from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import { KeptMeanwhile } from "../../meanwhile/kept-meanwhile.tsx";
import { type GuardedDraft, useGuardedDraft } from "../../meanwhile/use-guarded-draft.ts";
import { replaced } from "../../replaced.ts";
import { useSignedIn } from "../../session.ts";
import { keepPart } from "../keep-part.ts";
import { type PartProps, useHireAct } from "../use-hire.ts";
import { PostsCard } from "./posts-card.tsx";
import { StopEditor } from "./stop-editor.tsx";
import { StopPlanCard } from "./stop-plan.tsx";
import { Swings } from "./swings.tsx";
import { emptyTrip, isAtPlaceBefore, newStop, type Trip, withDrives } from "./trip-draft.ts";
import { WeatherCard } from "./weather-card.tsx";
import WillItLast, { useForecast } from "./will-it-last.tsx";

/** The trip with its stops, and whether everything aboard lasts. */
export default function TripPart({ page }: PartProps) {
  const { id } = page.hire;
  const { depot } = useSignedIn();
  const [isOpen, setOpen] = useState(page.trip === null);
  const draft = useGuardedDraft<Trip>(`trip.${id}`, {
    value: page.trip ?? emptyTrip(page.hire, depot),
    version: page.versions.trip,
  });
  const save = useHireAct(
    () =>
      keepPart(id, () =>
        take(
          client.PUT("/api/hires/{id}/trip", {
            params: { path: { id }, query: { basedOn: draft.basedOn } },
            body: draft.value,
          }),
        ),
      ),
    () => {
      draft.done();
      setOpen(false);
    },
  );
  return (
    <>
      <WillItLast page={page} />
      {!draft.isDirty && <StopPlanCard page={page} />}
      {!draft.isDirty && <Explained page={page} />}
      {isOpen || draft.isDirty ? (
        <TripForm draft={draft} save={save} />
      ) : (
        <section className="card row spread">
          <p>{t("trip.stopsCount", { n: page.trip?.stops.length ?? 0 })}</p>
          <Button onPress={() => setOpen(true)}>{t("trip.edit")}</Button>
        </section>
      )}
    </>
  );
}

/** What the posts can do, and what moves the answer: of the forecast as asked. */
function Explained({ page }: PartProps) {
  const forecast = useForecast(page).data?.result as TripForecast | undefined;
  if (forecast === undefined) return null;
  const { news, shown } = tellTrip(forecast);
  const asked = [...news, ...shown.filter((store) => !news.includes(store))];
  return (
    <>
      <PostsCard posts={forecast.posts ?? []} />
      <Swings page={page} stores={asked} />
      {page.trip !== null && <WeatherCard page={page} trip={page.trip} />}
    </>
  );
}

interface TripFormProps {
  readonly draft: GuardedDraft<Trip>;
  readonly save: Pick<UseMutationResult<unknown, unknown, void>, "mutate" | "isPending" | "error" | "reset">;
}

function TripForm({ draft, save }: TripFormProps) {
  const { value: trip, set } = draft;
  const setStop = (place: number, stop: Trip["stops"][number] | null) =>
    set(
      withDrives({
        ...trip,
        stops: replaced(trip.stops, place, stop),
      }),
    );
  const { error } = save;
  return (
    <section className="card sheet" aria-labelledby="stops-title">
      <h2 id="stops-title">{t("trip.stops")}</h2>
      <div className="sheet-fields">
        <DateTimeField
          label={t("trip.depart")}
          value={trip.depart}
          onChange={(depart) => set({ ...trip, depart })}
          error={problemAt(error, "depart")}
        />
        <DateTimeField
          label={t("trip.return")}
          value={trip.return}
          onChange={(back) => set({ ...trip, return: back })}
          error={problemAt(error, "return")}
        />
      </div>
      {trip.stops.map((stop, k) => (
        <StopEditor
          // biome-ignore lint/suspicious/noArrayIndexKey: a stop is its place in the order
          key={k}
          stop={stop}
          place={k}
          isAtPlaceBefore={isAtPlaceBefore(trip, k)}
          error={error}
          onChange={(next) => setStop(k, next)}
          onRemove={() => setStop(k, null)}
        />
      ))}
      <div>
        <Button onPress={() => set(withDrives({ ...trip, stops: [...trip.stops, newStop(trip)] }))}>
          {t("trip.addStop")}
        </Button>
      </div>
      <div className="sheet-fields">
        <NumberField
          label={t("trip.returnKm")}
          unit="km"
          min={0}
          max={2000}
          value={trip.returnDrive.distanceKm}
          onChange={(km) => set({ ...trip, returnDrive: { ...trip.returnDrive, distanceKm: km ?? 0 } })}
          error={problemAt(error, "returnDrive.distanceKm")}
        />
        <NumberField
          label={t("trip.returnMinutes")}
          unit="min"
          min={0}
          max={1440}
          value={trip.returnDrive.minutes}
          onChange={(minutes) =>
            set({ ...trip, returnDrive: { ...trip.returnDrive, minutes: minutes ?? 0 } })
          }
          error={problemAt(error, "returnDrive.minutes")}
        />
      </div>
      <p className="quiet">{t("trip.driveNote")}</p>
      <KeptMeanwhile draft={draft} failure={error} onSettled={save.reset} />
      <div className="sheet-foot">
        <Button look="main" onPress={() => save.mutate()} isPending={save.isPending}>
          {t(save.isPending ? "desk.sending" : "trip.save")}
        </Button>
        {draft.isDirty && (
          <Button look="quiet" onPress={draft.done}>
            {t("desk.dropChanges")}
          </Button>
        )}
      </div>
    </section>
  );
}
