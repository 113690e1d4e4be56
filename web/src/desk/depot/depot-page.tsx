import { useMutation, useQuery } from "@tanstack/react-query";
import type { FormEvent } from "react";
import { Link } from "wouter";
import { client } from "../../api/client.ts";
import { problemAt, take } from "../../api/failure.ts";
import { Button, Loading, NumberField, TextField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { KeptMeanwhile } from "../meanwhile/kept-meanwhile.tsx";
import { sendOrRead, useGuardedDraft } from "../meanwhile/use-guarded-draft.ts";
import { queries } from "../query-client.ts";
import { useSignedIn } from "../session.ts";
import { usePageTitle } from "../use-page-title.ts";
import { ClosedDays } from "./closed-days.tsx";
import { DistancesField } from "./distances-field.tsx";
import { HolidayFields } from "./holiday-fields.tsx";
import { OpeningFields } from "./opening-fields.tsx";
import type { PieceProps, Settings } from "./piece-props.ts";
import { PointFields } from "./point-fields.tsx";
import { WeatherService } from "./weather-service.tsx";
import "../hire/hire.css";
import "../terms/terms.css";

const SKILLS = ["desk", "cleaner", "yard", "technician"] as const;

/** Hours, turnaround, people on a usual day and school holidays of this depot. */
export default function DepotPage() {
  usePageTitle(t("depot.title"));
  const mayWrite = useSignedIn().may.includes("terms.write");
  const found = useQuery({ queryKey: ["depot"], queryFn: () => take(client.GET("/api/depot")) });
  return (
    <>
      <div className="page-head">
        <h1>{t("depot.title")}</h1>
        <p className="quiet">{t("depot.lead")}</p>
        <div className="page-acts">
          <Link href="/depot/times" className="link-row">
            {t("times.title")}
          </Link>
        </div>
      </div>
      {found.isPending && <Loading />}
      <FailureNote failure={found.error} onAgain={() => void found.refetch()} />
      {found.data !== undefined && <SettingsForm now={found.data} />}
      <WeatherService mayWrite={mayWrite} />
    </>
  );
}

function SettingsForm({ now }: { readonly now: Settings }) {
  const mayWrite = useSignedIn().may.includes("terms.write");
  const draft = useGuardedDraft<Settings>("depotSettings", { value: now, version: now.version });
  const { value, basedOn } = draft;
  const save = useMutation({
    mutationFn: () => {
      const { timeZone: _, country: __, ...settings } = value;
      const body = { ...settings, version: Number(basedOn) };
      return sendOrRead(
        () => take(client.PUT("/api/depot", { body })),
        () => queries.invalidateQueries({ queryKey: ["depot"] }),
      );
    },
    onSuccess: (answer) => {
      draft.done();
      queries.setQueryData(["depot"], answer);
      for (const kind of ["diary", "session", "today", "hire"])
        void queries.invalidateQueries({ queryKey: [kind] });
    },
  });
  const send = (event: FormEvent) => {
    event.preventDefault();
    save.mutate();
  };
  const change = (part: Partial<Settings>) => draft.set({ ...value, ...part });
  const pieces = { value, change, failure: save.error };
  return (
    <form className="stack" onSubmit={send} noValidate>
      <Hours {...pieces} />
      <OpeningFields {...pieces} />
      <ClosedDays {...pieces} />
      <Where {...pieces} />
      <Team {...pieces} />
      <HolidayFields {...pieces} />
      <KeptMeanwhile draft={draft} failure={save.error} onSettled={save.reset} ownFields={["version"]} />
      {mayWrite ? (
        <div className="row">
          <Button type="submit" look="main" isPending={save.isPending} isDisabled={!draft.isDirty}>
            {t("depot.keep")}
          </Button>
          {draft.isDirty && (
            <Button look="quiet" onPress={draft.done}>
              {t("desk.dropChanges")}
            </Button>
          )}
        </div>
      ) : (
        <p className="quiet">{t("depot.managerOnly")}</p>
      )}
    </form>
  );
}

function Hours({ value, change, failure }: PieceProps) {
  return (
    <section className="card stack" aria-labelledby="hours-title">
      <h2 id="hours-title">{t("depot.hours")}</h2>
      <div className="sheet-fields">
        {(["name", "telephone"] as const).map((field) => (
          <TextField
            key={field}
            label={t(`depot.${field}`)}
            type={field === "telephone" ? "tel" : "text"}
            value={value[field]}
            onChange={(text) => change({ [field]: text })}
            error={problemAt(failure, field)}
          />
        ))}
        <NumberField
          label={t("depot.turnaround")}
          unit={t("depot.minutes")}
          note={t("depot.turnaroundNote")}
          value={value.turnaroundMinutes}
          min={0}
          max={2880}
          onChange={(n) => change({ turnaroundMinutes: n ?? 0 })}
          error={problemAt(failure, "turnaroundMinutes")}
        />
      </div>
    </section>
  );
}

function Where({ value, change, failure }: PieceProps) {
  return (
    <section className="card stack" aria-labelledby="where-title">
      <h2 id="where-title">{t("point.title")}</h2>
      <p className="quiet">{t("point.note")}</p>
      <PointFields
        point={value}
        onChange={({ latitudeDeg, longitudeDeg }) =>
          change({
            latitudeDeg: latitudeDeg ?? value.latitudeDeg,
            longitudeDeg: longitudeDeg ?? value.longitudeDeg,
          })
        }
        find={(q) => take(client.GET("/api/places", { params: { query: { q } } }))}
        errors={{
          latitude: problemAt(failure, "latitudeDeg"),
          longitude: problemAt(failure, "longitudeDeg"),
        }}
      />
      <DistancesField value={value.distances} onChange={(distances) => change({ distances })} />
    </section>
  );
}

function Team({ value, change, failure }: PieceProps) {
  return (
    <section className="card stack" aria-labelledby="crew-title">
      <h2 id="crew-title">{t("depot.crew")}</h2>
      <p className="quiet">{t("depot.crewNote")}</p>
      <div className="sheet-fields">
        {SKILLS.map((skill) => (
          <NumberField
            key={skill}
            label={t("depot.skill", { skill })}
            value={value.crew[skill]}
            min={0}
            max={50}
            stepper
            onChange={(n) => change({ crew: { ...value.crew, [skill]: n ?? 0 } })}
            error={problemAt(failure, `crew.${skill}`)}
          />
        ))}
      </div>
    </section>
  );
}
