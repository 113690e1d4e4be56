import type { VehicleDescription, VehicleFigures, View } from "@setfair/engine";
import { useQuery } from "@tanstack/react-query";
import { useState } from "react";
import { Link } from "wouter";
import { client, type Schemas } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import {
  Button,
  ChoiceField,
  FigureTap,
  FindingsList,
  LinkButton,
  Loading,
  type ShownFigure,
} from "../../parts/index.ts";
import { dateText, has, say, t } from "../../parts/words.ts";
import { CustodyCard } from "../custody/custody-card.tsx";
import { FailureNote } from "../failure-note.tsx";
import { useSignedIn } from "../session.ts";
import { usePageTitle } from "../use-page-title.ts";
import { placeOfHire } from "../where.ts";
import { VehicleDue } from "./due/vehicle-due.tsx";
import { saveAsFile } from "./save-description.ts";
import { VehicleDrawing } from "./vehicle-drawing.tsx";
import { WeighedCard } from "./weighed-card.tsx";
import "./fleet.css";
import "./editor/editor.css";

type Page = Schemas["VehiclePage"];
const VIEWS = ["nearside", "offside", "front", "rear", "roof", "inside"] as const satisfies readonly View[];
const FIGURES = [
  "payload",
  "minimumPayload",
  "belts",
  "berths",
  "usableAh",
  "lpgKg",
  "waterLitres",
  "wasteLitres",
  "heightM",
] as const;

/** One vehicle: its drawing, and what follows from its description. */
export default function VehiclePage({ id }: { readonly id: string }) {
  const vehicle = useQuery({
    queryKey: ["vehicle", id],
    queryFn: () => take(client.GET("/api/vehicles/{id}", { params: { path: { id } } })),
  });
  if (vehicle.isPending) return <Loading />;
  if (vehicle.isError) return <FailureNote failure={vehicle.error} onAgain={() => void vehicle.refetch()} />;
  return <Vehicle page={vehicle.data} />;
}

function Vehicle({ page }: { readonly page: Page }) {
  const { summary } = page;
  usePageTitle(summary.name);
  return (
    <>
      <div className="page-head">
        <h1>
          {summary.name} {summary.registration}
        </h1>
        <Doors page={page} />
        <p className="quiet">
          {say(`body.style.${summary.bodyStyle}`)} ·{" "}
          {t("fleet.room", { belts: summary.belts, berths: summary.berths })} ·{" "}
          {t(`fleet.now.${summary.now}`)}
        </p>
      </div>
      <div className="fleet-columns">
        <div className="stack">
          <Drawing page={page} />
          <Fitted page={page} />
        </div>
        <div className="stack">
          <Figures page={page} />
          <WeighedCard page={page} />
          <VehicleDue id={summary.id} />
          <CustodyCard vehicleId={summary.id} />
          <Marks page={page} />
          <Hires page={page} />
        </div>
      </div>
    </>
  );
}

/** What can be done with the description. */
function Doors({ page }: PieceProps) {
  const { may } = useSignedIn();
  const home = `/fleet/${encodeURIComponent(page.summary.id)}`;
  return (
    <div className="row">
      {may.includes("vehicle.write") && (
        <LinkButton href={`${home}/edit`} look="main">
          {t("fleet.edit.open")}
        </LinkButton>
      )}
      <LinkButton href={`${home}/versions`}>{t("fleet.versions.open")}</LinkButton>
      <Button onPress={() => saveAsFile(page.description)}>{t("fleet.export")}</Button>
    </div>
  );
}

const markText = (mark: Page["marks"][number]): string =>
  t("back.mark", {
    kind: mark.markKind,
    part: has(`part.${mark.part}`) ? say(`part.${mark.part}`) : mark.part,
    size: mark.sizeMm ?? 0,
  });

interface PieceProps {
  readonly page: Page;
}

function Drawing({ page }: PieceProps) {
  const [view, setView] = useState<(typeof VIEWS)[number]>("nearside");
  // the server sends the description as it was checked by the engine
  const description = page.description as VehicleDescription;
  return (
    <section className="card stack">
      <ChoiceField
        label={t("fleet.view")}
        value={view}
        options={VIEWS.map((each) => ({ value: each, label: say(`view.${each}`) }))}
        onChange={setView}
      />
      <VehicleDrawing vehicle={description} view={view} marks={page.marks} />
    </section>
  );
}

function Figures({ page }: PieceProps) {
  const derived = page.derived as VehicleFigures;
  const { masses } = page.description;
  return (
    <section className="card" aria-labelledby="figures-title">
      <h2 id="figures-title">{t("fleet.figures")}</h2>
      <dl className="sums">
        <AxleReserves derived={derived} />
        {FIGURES.map((name) => (
          <div key={name}>
            <dt>{t(`fleet.figure.${name}`)}</dt>
            <dd>
              <FigureTap figure={derived[name] as ShownFigure} label={t(`fleet.figure.${name}`)} />
              {name === "heightM" && (
                <span className="quiet">
                  {" "}
                  {t("fleet.feet", {
                    feet: derived.heightFeetInches.feet,
                    inches: derived.heightFeetInches.inches,
                  })}
                </span>
              )}
            </dd>
          </div>
        ))}
      </dl>
      {!masses.miroBasis.weighed && page.weighed === null && <p className="quiet">{t("fleet.notWeighed")}</p>}
      {page.findings.length > 0 && <FindingsList findings={page.findings} />}
    </section>
  );
}

function AxleReserves({ derived }: { readonly derived: VehicleFigures }) {
  return (["front", "rear"] as const).map((axle) => {
    const label = t(axle === "front" ? "fleet.figure.axleFront" : "fleet.figure.axleRear");
    return (
      <div key={axle}>
        <dt>{label}</dt>
        <dd>
          <FigureTap figure={derived.axleReserve[axle]} label={label} />
        </dd>
      </div>
    );
  });
}

function Fitted({ page }: PieceProps) {
  return (
    <section className="card" aria-labelledby="fitted-title">
      <h2 id="fitted-title">{t("fleet.fitted", { n: page.description.systems.length })}</h2>
      <ul className="fitted">
        {page.description.systems.map(({ id, kind }) => (
          <li key={id}>{has(`thing.${kind}`) ? say(`thing.${kind}`) : kind}</li>
        ))}
      </ul>
    </section>
  );
}

function Marks({ page }: PieceProps) {
  return (
    <section className="card" aria-labelledby="marks-title">
      <h2 id="marks-title">{t("fleet.marks", { n: page.marks.length })}</h2>
      <ol className="conditions-list">
        {page.marks.map((mark) => (
          <li key={mark.recordId}>
            {t("fleet.mark", { what: markText(mark), since: dateText(mark.since, "short") })}
          </li>
        ))}
      </ol>
    </section>
  );
}

function Hires({ page }: PieceProps) {
  return (
    <section className="card" aria-labelledby="hires-title">
      <h2 id="hires-title">{t("fleet.hires", { n: page.hires.length })}</h2>
      <ul>
        {page.hires.slice(0, 12).map((hire) => (
          <li key={hire.hireId} className="fleet-hire">
            <Link href={placeOfHire(hire.hireId)} className="link-row">
              {hire.customer}
            </Link>
            <span className="quiet">
              {dateText(hire.from, "short")} – {dateText(hire.to, "short")} · {say(`stage.${hire.stage}`)}
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}
