import { useMutation, useQuery } from "@tanstack/react-query";
import { client } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { TickField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { queries } from "../query-client.ts";

/** Whether this depot fetches forecasts: off to begin with, and only where the server knows a service. */
export function WeatherService({ mayWrite }: { readonly mayWrite: boolean }) {
  const service = useQuery({
    queryKey: ["weather-service"],
    queryFn: () => take(client.GET("/api/weather-service")),
  });
  const change = useMutation({
    mutationFn: (isOn: boolean) => take(client.PUT("/api/weather-service", { body: { isOn } })),
    onSuccess: (answer) => {
      queries.setQueryData(["weather-service"], answer);
      // the setting is kept with the depot, which has a new version now
      void queries.invalidateQueries({ queryKey: ["depot"] });
    },
  });
  if (service.data === undefined) return <FailureNote failure={service.error} />;
  const { credit, isOn } = service.data;
  return (
    <section className="card stack" aria-labelledby="weather-service-title">
      <h2 id="weather-service-title">{t("weather.service.title")}</h2>
      <p className="quiet">{t(credit === null ? "weather.service.none" : "weather.service.what")}</p>
      {credit !== null && (
        <TickField value={isOn} onChange={change.mutate} disabled={!mayWrite || change.isPending}>
          {t("weather.service.on", { credit })}
        </TickField>
      )}
      <FailureNote failure={change.error} />
    </section>
  );
}
