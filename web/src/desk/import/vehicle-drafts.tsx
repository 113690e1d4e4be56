import { BODY_STYLES } from "@setfair/engine";
import { useMutation, useQuery } from "@tanstack/react-query";
import { useLocation } from "wouter";
import { client, type Schemas } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { Button } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { startFromStyle, type VehicleDraft, withValue } from "../fleet/editor/draft.ts";
import { queries } from "../query-client.ts";
import { useSignedIn } from "../session.ts";
import { keepDraft } from "../use-draft.ts";

type Listed = Schemas["VehicleDrafts"]["drafts"][number];

/** A listed vehicle as the vehicle editor begins with it: the usual of its body style, and what the list said. */
function beginDescription(listed: Listed, today: string): VehicleDraft {
  const style = BODY_STYLES.find((each) => each === listed.bodyStyle) ?? "panelVanConversion";
  const draft = startFromStyle(style, today);
  const said = [
    ["name", listed.name],
    ["registration", listed.registration],
    ["masses.mamKg", listed.mamKg],
    ["firstRegistered", listed.firstRegistered],
  ] as const;
  const description = said.reduce(
    (before, [path, value]) => (value === null ? before : withValue(before, path, value)),
    draft.description,
  );
  return { ...draft, description };
}

/** Vehicles that came in as a list: each waits to be described. */
export function VehicleDrafts() {
  const { today } = useSignedIn();
  const [, go] = useLocation();
  const drafts = useQuery({
    queryKey: ["vehicleDrafts"],
    queryFn: () => take(client.GET("/api/vehicle-drafts")),
  });
  const forget = useMutation({
    mutationFn: (id: string) => take(client.DELETE("/api/vehicle-drafts/{id}", { params: { path: { id } } })),
    onSuccess: () => void queries.invalidateQueries({ queryKey: ["vehicleDrafts"] }),
  });
  const listed = drafts.data?.drafts ?? [];
  if (listed.length === 0) return <FailureNote failure={drafts.error} />;
  const describe = (each: Listed) => {
    keepDraft("vehicle.new", beginDescription(each, today));
    go("/fleet/new");
  };
  return (
    <section className="card stack" aria-labelledby="drafts-title">
      <h2 id="drafts-title">{t("import.drafts")}</h2>
      <ul className="stack-tight">
        {listed.map((each) => (
          <li key={each.id} className="row spread">
            <strong>{t("import.draft", each)}</strong>
            <span className="row">
              <Button onPress={() => describe(each)}>{t("import.describe")}</Button>
              <Button look="quiet" onPress={() => forget.mutate(each.id)}>
                {t("import.forget")}
              </Button>
            </span>
          </li>
        ))}
      </ul>
      <FailureNote failure={forget.error} />
    </section>
  );
}
