import { deriveDraft, sketchVehicle, type VehicleFigures, VIEWS, type View } from "@setfair/engine";
import { useDeferredValue, useState } from "react";
import { FigureTap, SelectField, type ShownFigure } from "../../../parts/index.ts";
import { say, t } from "../../../parts/words.ts";
import { VehicleDrawing } from "../vehicle-drawing.tsx";
import { type VehicleDraft, wholeOf } from "./draft.ts";

type Derived = ReturnType<typeof deriveDraft>;
const FIGURES: readonly (readonly [string, (derived: Derived) => ShownFigure | null])[] = [
  ["payload", ({ payload }) => payload],
  ["minimumPayload", ({ minimumPayload }) => minimumPayload],
  ["axleFront", ({ axleReserve }) => axleReserve?.front ?? null],
  ["axleRear", ({ axleReserve }) => axleReserve?.rear ?? null],
  ["belts", ({ belts }) => belts],
  ["berths", ({ berths }) => berths],
  ["usableAh", ({ usableAh }) => usableAh],
  ["lpgKg", ({ lpgKg }) => lpgKg],
  ["waterLitres", ({ waterLitres }) => waterLitres],
  ["wasteLitres", ({ wasteLitres }) => wasteLitres],
  ["heightM", ({ heightM }) => heightM],
];
const DRAWN: readonly View[] = VIEWS.filter((view) => view !== "underside");
const isWide = () => window.matchMedia("(min-width: 1001px)").matches;

function Feet({ height }: { readonly height: VehicleFigures["heightFeetInches"] | null }) {
  return height === null ? null : (
    <span className="quiet"> {t("fleet.feet", { feet: height.feet, inches: height.inches })}</span>
  );
}

/** The vehicle as described so far: drawn, and with whatever follows from it already. */
export function EditorAside({ draft }: { readonly draft: VehicleDraft }) {
  const [view, setView] = useState<View>("nearside");
  const description = wholeOf(useDeferredValue(draft));
  const derived = deriveDraft(description);
  return (
    <details className="card editor-aside" open={isWide()}>
      <summary className="fold">{t("fleet.edit.figures")}</summary>
      <div className="stack-tight">
        <VehicleDrawing vehicle={sketchVehicle(description)} view={view} marks={[]} />
        <SelectField
          label={t("fleet.view")}
          value={view}
          options={DRAWN.map((each) => ({ value: each, label: say(`view.${each}`) }))}
          onChange={setView}
        />
        <dl className="sums">
          {FIGURES.map(([name, of]) => {
            const figure = of(derived);
            const label = say(`fleet.figure.${name}`);
            return (
              <div key={name}>
                <dt>{label}</dt>
                <dd>
                  {figure === null ? (
                    <span className="quiet">{t("fleet.edit.notYet")}</span>
                  ) : (
                    <FigureTap figure={figure} label={label} />
                  )}
                  {name === "heightM" && <Feet height={derived.heightFeetInches} />}
                </dd>
              </div>
            );
          })}
        </dl>
      </div>
    </details>
  );
}
