import { useMutation, useQuery } from "@tanstack/react-query";
import { useState } from "react";
import { client, type Schemas } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { Button, Loading, SelectField, TickField } from "../../parts/index.ts";
import { dateText, t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { queries } from "../query-client.ts";

type Feed = Schemas["CalendarFeed"];
/** Links for one hire are made at the hire; here the diary and its vehicles. */
const WHOLE = "depot";

function FeedLine({ feed }: { readonly feed: Feed }) {
  const end = useMutation({
    mutationFn: () =>
      take(client.POST("/api/calendar-feeds/{id}/end", { params: { path: { id: feed.id } } })),
    onSuccess: () => void queries.invalidateQueries({ queryKey: ["calendarFeeds"] }),
  });
  return (
    <li className="row spread">
      <span>
        <strong>{feed.about ?? t("calendar.kind", { kind: feed.kind })}</strong>{" "}
        <span className="quiet">
          {t(feed.withNames ? "calendar.namesIn" : "calendar.withoutNames")},{" "}
          {feed.revokedAt === null
            ? t("calendar.since", { at: dateText(feed.at, "full"), by: feed.by })
            : t("calendar.ended", { at: dateText(feed.revokedAt, "full") })}
        </span>
      </span>
      {feed.revokedAt === null && (
        <Button look="quiet" onPress={() => end.mutate()} isPending={end.isPending}>
          {t("calendar.end")}
        </Button>
      )}
      <FailureNote failure={end.error} />
    </li>
  );
}

export function useVehicles() {
  return useQuery({ queryKey: ["vehicles"], queryFn: () => take(client.GET("/api/vehicles")) });
}

/** Secret links to the diary or one vehicle, for calendar programs. */
export function CalendarLinks() {
  const [about, setAbout] = useState(WHOLE);
  const [withNames, setNames] = useState(false);
  const vehicles = useVehicles();
  const feeds = useQuery({
    queryKey: ["calendarFeeds"],
    queryFn: () => take(client.GET("/api/calendar-feeds")),
  });
  const make = useMutation({
    mutationFn: () =>
      take(
        client.POST("/api/calendar-feeds", {
          body: about === WHOLE ? { kind: "depot", withNames } : { kind: "vehicle", about, withNames },
        }),
      ),
    onSuccess: () => void queries.invalidateQueries({ queryKey: ["calendarFeeds"] }),
  });
  const options = [
    { value: WHOLE, label: t("calendar.kind", { kind: "depot" }) },
    ...(vehicles.data?.vehicles ?? []).map(({ id, name, registration }) => ({
      value: id,
      label: `${name} ${registration}`,
    })),
  ];
  return (
    <section className="card stack" aria-labelledby="calendars-title">
      <h2 id="calendars-title">{t("calendar.title")}</h2>
      <p className="quiet">{t("calendar.lead")}</p>
      <SelectField label={t("calendar.which")} value={about} options={options} onChange={setAbout} />
      <TickField value={withNames} onChange={setNames}>
        {t("calendar.withNames")}
      </TickField>
      <div className="row">
        <Button onPress={() => make.mutate()} isPending={make.isPending}>
          {t("calendar.make")}
        </Button>
      </div>
      <FailureNote failure={make.error} />
      {make.data !== undefined && (
        <div className="stack-tight" role="status">
          <p>{t("calendar.made")}</p>
          <p className="link-once">{make.data.url}</p>
          <div className="row">
            <Button onPress={() => void navigator.clipboard.writeText(make.data.url)}>
              {t("calendar.copy")}
            </Button>
          </div>
        </div>
      )}
      <h3>{t("calendar.links")}</h3>
      {feeds.isPending && <Loading />}
      <FailureNote failure={feeds.error} onAgain={() => void feeds.refetch()} />
      {feeds.data?.feeds.length === 0 && <p className="quiet">{t("calendar.noLinks")}</p>}
      <ul className="stack-tight">
        {feeds.data?.feeds.map((feed) => (
          <FeedLine key={feed.id} feed={feed} />
        ))}
      </ul>
    </section>
  );
}
