import { BODY_STYLES, sketchVehicle, type VehicleDescription } from "@setfair/engine";
import { useMutation, useQuery, useQueryClient } from "@tanstack/react-query";
import { useState } from "react";
import { FileTrigger } from "react-aria-components";
import { useLocation } from "wouter";
import { client, type Schemas } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { Button, Problem } from "../../parts/index.ts";
import { say, t } from "../../parts/words.ts";
import { useSignedIn } from "../session.ts";
import { useDraft } from "../use-draft.ts";
import { usePageTitle } from "../use-page-title.ts";
import {
  startFromFile,
  startFromSister,
  startFromStyle,
  type VehicleDraft,
  wholeOf,
} from "./editor/draft.ts";
import { Editor } from "./editor/editor.tsx";
import { VehicleDrawing } from "./vehicle-drawing.tsx";
import "./fleet.css";

/** A new vehicle: from a body style, a sister or a file to a description that is whole. */
export default function NewVehiclePage() {
  usePageTitle(t("fleet.edit.newTitle"));
  const { may, today } = useSignedIn();
  const draft = useDraft<VehicleDraft | null>("vehicle.new", null);
  if (!may.includes("vehicle.write")) return <Problem title={t("fleet.edit.onlyManagers")} />;
  return (
    <>
      <div className="page-head">
        <h1>{t("fleet.edit.newTitle")}</h1>
        {draft.value !== null && (
          <Button look="quiet" onPress={draft.done}>
            {t("fleet.edit.startOver")}
          </Button>
        )}
      </div>
      {draft.value === null ? (
        <Starts today={today} onStart={draft.set} />
      ) : (
        <NewEditor draft={draft.value} set={draft.set} done={draft.done} />
      )}
    </>
  );
}

/** The description as the server takes it; its own check is the last word. */
export const bodyOf = (draft: VehicleDraft): Schemas["PutVehicle"] => ({
  description: wholeOf(draft) as unknown as Schemas["PutVehicle"]["description"], // checked whole before it is sent
  ...(draft.vehicleClass === null ? {} : { vehicleClass: draft.vehicleClass }),
  ...(draft.maxDogs === null ? {} : { maxDogs: draft.maxDogs }),
});

interface NewEditorProps {
  readonly draft: VehicleDraft;
  readonly set: (draft: VehicleDraft) => void;
  readonly done: () => void;
}

function NewEditor({ draft, set, done }: NewEditorProps) {
  const [, go] = useLocation();
  const queries = useQueryClient();
  const save = useMutation({
    mutationFn: () => take(client.POST("/api/vehicles", { body: bodyOf(draft) })),
    onSuccess: async (page) => {
      await queries.invalidateQueries({ queryKey: ["vehicles"] });
      go(`/fleet/${encodeURIComponent(page.summary.id)}`);
      done();
    },
  });
  return (
    <Editor
      draft={draft}
      set={set}
      onSave={save.mutate}
      isSaving={save.isPending}
      failure={save.error}
      saveLabel={t("fleet.edit.save")}
    />
  );
}

interface StartsProps {
  readonly today: string;
  readonly onStart: (draft: VehicleDraft) => void;
}

function Starts({ today, onStart }: StartsProps) {
  return (
    <div className="stack">
      <p>{t("fleet.edit.intro")}</p>
      <section className="card stack" aria-labelledby="style-title">
        <h2 id="style-title">{t("fleet.edit.fromStyle")}</h2>
        <p className="quiet">{t("fleet.edit.fromStyleNote")}</p>
        <div className="editor-starts">
          {BODY_STYLES.map((style) => (
            <button
              key={style}
              type="button"
              className="editor-start"
              onClick={() => onStart(startFromStyle(style, today))}
            >
              <span aria-hidden="true">
                <VehicleDrawing
                  vehicle={sketchVehicle(wholeOf(startFromStyle(style, today)))}
                  view="nearside"
                  marks={[]}
                />
              </span>
              {say(`body.style.${style}`)}
            </button>
          ))}
        </div>
      </section>
      <div className="fleet-columns">
        <Sisters today={today} onStart={onStart} />
        <FromFile onStart={onStart} />
      </div>
    </div>
  );
}

function Sisters({ today, onStart }: StartsProps) {
  const fleet = useQuery({ queryKey: ["vehicles"], queryFn: () => take(client.GET("/api/vehicles")) });
  const copy = useMutation({
    mutationFn: (id: string) => take(client.GET("/api/vehicles/{id}", { params: { path: { id } } })),
    // the server sends the description as it was checked by the engine
    onSuccess: (page) => onStart(startFromSister(page.description as VehicleDescription, today)),
  });
  const vehicles = fleet.data?.vehicles ?? [];
  return (
    <section className="card stack" aria-labelledby="sister-title">
      <h2 id="sister-title">{t("fleet.edit.fromSister")}</h2>
      <p className="quiet">{t("fleet.edit.fromSisterNote")}</p>
      {fleet.isSuccess && vehicles.length === 0 && <p>{t("fleet.edit.noSister")}</p>}
      <div className="row">
        {vehicles.map(({ id, name, registration }) => (
          <Button key={id} onPress={() => copy.mutate(id)}>
            {name} {registration}
          </Button>
        ))}
      </div>
    </section>
  );
}

/** Reads a file of JSON; what is not an object is refused with a word. */
async function readFile(file: File): Promise<VehicleDraft | string> {
  let json: unknown;
  try {
    json = JSON.parse(await file.text());
  } catch (error) {
    return t("fleet.edit.noJson", { name: file.name, why: error instanceof Error ? error.message : "" });
  }
  if (typeof json !== "object" || json === null || Array.isArray(json))
    return t("fleet.edit.noObject", { name: file.name });
  return startFromFile(json as Readonly<Record<string, unknown>>);
}

function FromFile({ onStart }: Pick<StartsProps, "onStart">) {
  const [problem, setProblem] = useState<string | null>(null);
  const take = async (files: FileList | null) => {
    const file = files?.[0];
    if (file === undefined) return;
    const read = await readFile(file);
    if (typeof read === "string") setProblem(read);
    else onStart(read);
  };
  return (
    <section className="card stack" aria-labelledby="file-title">
      <h2 id="file-title">{t("fleet.edit.fromFile")}</h2>
      <p className="quiet">{t("fleet.edit.fromFileNote")}</p>
      <div>
        <FileTrigger acceptedFileTypes={["application/json", ".json"]} onSelect={(files) => void take(files)}>
          <Button>{t("fleet.edit.choose")}</Button>
        </FileTrigger>
      </div>
      {problem !== null && <Problem title={problem} />}
    </section>
  );
}
