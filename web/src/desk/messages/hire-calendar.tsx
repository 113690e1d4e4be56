import { useMutation } from "@tanstack/react-query";
import { client } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { Button } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { queries } from "../query-client.ts";

/** When to come for the keys and when to bring them back, as a link for the hirer's own calendar. */
export function HireCalendar({ hireId }: { readonly hireId: string }) {
  const make = useMutation({
    mutationFn: () =>
      take(client.POST("/api/calendar-feeds", { body: { kind: "hire", about: hireId, withNames: false } })),
    onSuccess: () => void queries.invalidateQueries({ queryKey: ["calendarFeeds"] }),
  });
  return (
    <section className="card stack-tight" aria-labelledby="hire-calendar-title">
      <h2 id="hire-calendar-title">{t("calendar.forHirer")}</h2>
      <p className="quiet">{t("calendar.forHirerNote")}</p>
      <div className="row">
        <Button onPress={() => make.mutate()} isPending={make.isPending}>
          {t("calendar.make")}
        </Button>
      </div>
      <FailureNote failure={make.error} />
      {make.data !== undefined && (
        <div role="status">
          <p>{t("calendar.made")}</p>
          <p className="message-link">{make.data.url}</p>
        </div>
      )}
    </section>
  );
}
