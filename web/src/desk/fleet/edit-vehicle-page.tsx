import type { VehicleDescription } from "@setfair/engine";
import { useMutation, useQuery, useQueryClient } from "@tanstack/react-query";
import { useLocation } from "wouter";
import { client, type Schemas } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { Button, LinkButton, Loading, Problem } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { KeptMeanwhile } from "../meanwhile/kept-meanwhile.tsx";
import { sendOrRead, useGuardedDraft } from "../meanwhile/use-guarded-draft.ts";
import { useSignedIn } from "../session.ts";
import { usePageTitle } from "../use-page-title.ts";
import { startVersion, type VehicleDraft } from "./editor/draft.ts";
import { Editor } from "./editor/editor.tsx";
import { bodyOf } from "./new-vehicle-page.tsx";
import "./fleet.css";

/** Where the reader is in the editor, and what was put aside there. */
const OWN_FIELDS = ["step", "isTried", "aside"];
type Described = Pick<Schemas["VehiclePage"], "description" | "vehicleClass" | "maxDogs">;

/** A new version of a description, from a day on. */
export default function EditVehiclePage({ id }: { readonly id: string }) {
  const { may } = useSignedIn();
  const vehicle = useQuery({
    queryKey: ["vehicle", id],
    queryFn: () => take(client.GET("/api/vehicles/{id}", { params: { path: { id } } })),
  });
  if (!may.includes("vehicle.write")) return <Problem title={t("fleet.edit.onlyManagers")} />;
  if (vehicle.isPending) return <Loading />;
  if (vehicle.isError) return <FailureNote failure={vehicle.error} onAgain={() => void vehicle.refetch()} />;
  return <EditVersion id={id} page={vehicle.data} />;
}

function EditVersion({ id, page }: { readonly id: string; readonly page: Schemas["VehiclePage"] }) {
  const { today } = useSignedIn();
  const { name } = page.summary;
  usePageTitle(t("fleet.edit.title", { name }));
  // the server sends descriptions as they were checked by the engine
  const begin = ({ description, vehicleClass, maxDogs }: Described): VehicleDraft =>
    startVersion(description as VehicleDescription, vehicleClass, maxDogs, today);
  const draft = useGuardedDraft<VehicleDraft>(`vehicle.${id}`, {
    value: begin(page),
    version: page.newest.versionId,
    newest: begin(page.newest),
  });
  const { basedOn } = draft;
  const [, go] = useLocation();
  const queries = useQueryClient();
  const home = `/fleet/${encodeURIComponent(id)}`;
  const save = useMutation({
    mutationFn: () =>
      sendOrRead(
        () =>
          take(
            client.PUT("/api/vehicles/{id}", {
              params: { path: { id }, query: { basedOn } },
              body: bodyOf(draft.value),
            }),
          ),
        () => queries.invalidateQueries({ queryKey: ["vehicle", id] }),
      ),
    onSuccess: async () => {
      await queries.invalidateQueries({ queryKey: ["vehicles"] });
      await queries.invalidateQueries({ queryKey: ["vehicle", id] });
      go(home);
      draft.done();
    },
  });
  return (
    <>
      <div className="page-head">
        <h1>{t("fleet.edit.title", { name })}</h1>
        <div className="row">
          {draft.isDirty && (
            <Button look="quiet" onPress={draft.done}>
              {t("fleet.edit.discard")}
            </Button>
          )}
          <LinkButton href={home}>{t("fleet.back", { name })}</LinkButton>
        </div>
      </div>
      <Editor
        draft={draft.value}
        set={draft.set}
        onSave={save.mutate}
        isSaving={save.isPending}
        failure={save.error}
        saveLabel={t("fleet.edit.saveVersion")}
        refusal={
          <KeptMeanwhile draft={draft} failure={save.error} onSettled={save.reset} ownFields={OWN_FIELDS} />
        }
      />
    </>
  );
}
