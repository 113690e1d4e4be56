import { useMutation, useQuery } from "@tanstack/react-query";
import { client, type Schemas } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { Button, LinkButton, Loading } from "../../parts/index.ts";
import { dateText, t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { useSignedIn } from "../session.ts";
import { usePageTitle } from "../use-page-title.ts";
import { fieldName, thingName, valueText } from "./field-words.ts";
import { saveVersion } from "./save-description.ts";
import "./fleet.css";
import "./editor/editor.css";

type Versions = Schemas["VehicleVersions"];
type Version = Versions["versions"][number];
type Change = Version["changes"][number];

/** What differed, as a sentence. */
export function changeText(change: Change): string {
  const { kind } = change;
  if (change.what === "system") {
    const thing = thingName(kind ?? "");
    return t(change.change === "removed" ? "fleet.change.removed" : "fleet.change.fitted", { thing });
  }
  const field = change.field ?? "";
  const name = fieldName(kind, field.replace(/\.\d+(?=\.)/, ""));
  return t("fleet.change.field", {
    field: kind === null ? name : t("fleet.edit.fieldOf", { thing: thingName(kind), field: name }),
    from: valueText(kind, field, change.from),
    to: valueText(kind, field, change.to),
  });
}

/** Every version of a description by its day, with what changed. */
export default function VersionsPage({ id }: { readonly id: string }) {
  const asked = useQuery({
    queryKey: ["vehicle", id, "versions"],
    queryFn: () => take(client.GET("/api/vehicles/{id}/versions", { params: { path: { id } } })),
    staleTime: 0,
  });
  if (asked.isPending) return <Loading />;
  if (asked.isError) return <FailureNote failure={asked.error} onAgain={() => void asked.refetch()} />;
  return <VersionList versions={asked.data} />;
}

function VersionList({ versions: { id, name, versions } }: { readonly versions: Versions }) {
  const title = t("fleet.versions.title", { name });
  usePageTitle(title);
  const save = useMutation({ mutationFn: (versionId: string) => saveVersion(id, versionId) });
  return (
    <>
      <div className="page-head">
        <h1>{title}</h1>
        <LinkButton href={`/fleet/${encodeURIComponent(id)}`}>{t("fleet.back", { name })}</LinkButton>
      </div>
      <section className="card">
        <p>{t("fleet.versions.intro")}</p>
        <FailureNote failure={save.error} />
        <ol className="versions">
          {versions.map((version, k) => (
            <VersionLine
              key={version.versionId}
              version={version}
              isFirst={k === versions.length - 1}
              onSave={() => save.mutate(version.versionId)}
            />
          ))}
        </ol>
      </section>
    </>
  );
}

interface VersionLineProps {
  readonly version: Version;
  readonly isFirst: boolean;
  readonly onSave: () => void;
}

function stateText(version: Version, today: string): string | null {
  if (version.isInForce) return t("fleet.versions.inForce");
  if (version.isReplaced) return t("fleet.versions.replaced");
  return version.validFrom > today ? t("fleet.versions.toCome") : null;
}

function VersionLine({ version, isFirst, onSave }: VersionLineProps) {
  const { today } = useSignedIn();
  const state = stateText(version, today);
  const at = dateText(version.at, "short");
  return (
    <li className="stack-tight">
      <div className="row spread">
        <h2>
          {t("fleet.versions.holds", { from: dateText(version.validFrom, "full") })}{" "}
          {state !== null && <span className="quiet">· {state}</span>}
        </h2>
        <Button look="quiet" onPress={onSave}>
          {t("fleet.export")}
        </Button>
      </div>
      <p className="quiet">
        {version.by === null
          ? t("fleet.versions.written", { at })
          : t("fleet.versions.writtenBy", { at, by: version.by })}
      </p>
      {version.changes.length === 0 ? (
        <p>{t(isFirst ? "fleet.versions.first" : "fleet.versions.same")}</p>
      ) : (
        <details open>
          <summary className="fold">{t("fleet.versions.changes", { n: version.changes.length })}</summary>
          <ul>
            {version.changes.map((change) => (
              <li key={`${change.what} ${change.kind} ${change.field ?? change.change}`}>
                {changeText(change)}
              </li>
            ))}
          </ul>
        </details>
      )}
    </li>
  );
}
