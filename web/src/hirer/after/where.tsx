import { drawVehicle, partsOf } from "@setfair/drawing";
import type { VehicleDescription, View } from "@setfair/engine";
import { type MouseEvent, useId, useRef } from "react";
import { SvgView } from "../../parts/svg-view.tsx";
import { t } from "../../parts/words.ts";
import { partWords } from "./part-words.ts";

export const SIDES = [
  "nearside",
  "offside",
  "front",
  "rear",
  "roof",
  "inside",
  "cab",
  "underside",
] as const satisfies readonly View[];

/** A place on the vehicle: the part, and the spot on the drawing as shares of its width and height. */
export interface Place {
  readonly view: View;
  readonly part: string;
  readonly name: string;
  readonly xShare: number;
  readonly yShare: number;
}

export interface WhereProps {
  readonly vehicle: VehicleDescription;
  readonly name: string;
  readonly view: View;
  readonly place: Place | null;
  readonly error: string | null;
  readonly onView: (view: View) => void;
  readonly onPlace: (place: Place | null) => void;
}

const share = (at: number, from: number, size: number): number =>
  size === 0 ? 0.5 : Math.round(Math.min(1, Math.max(0, (at - from) / size)) * 1000) / 1000;

/** Where a mark is: the side, then the part by its name or by touching the drawing. */
export function Where({ vehicle, name, view, place, error, onView, onPlace }: WhereProps) {
  const id = useId();
  const drawing = useRef<HTMLDivElement>(null);
  const parts = partsOf(vehicle, view).toSorted((a, b) => partWords(a.name).localeCompare(partWords(b.name)));
  const placeOf = (part: string, spot: { readonly x: number; readonly y: number }): Place | null => {
    const found = parts.find((one) => one.part === part);
    return found === undefined
      ? null
      : { view, part, name: partWords(found.name), xShare: spot.x, yShare: spot.y };
  };
  const choose = (part: string) =>
    onPlace(part === "" ? null : placeOf(part, middleOf(drawing.current, part)));
  const touch = (event: MouseEvent<HTMLDivElement>) => {
    const box = event.currentTarget.querySelector("svg")?.getBoundingClientRect();
    if (box === undefined || !(event.target instanceof Element)) return;
    const part = event.target.closest("[data-part]")?.getAttribute("data-part") ?? place?.part;
    if (part === undefined) return;
    const spot = {
      x: share(event.clientX, box.left, box.width),
      y: share(event.clientY, box.top, box.height),
    };
    onPlace(placeOf(part, spot));
  };
  const here =
    place === null
      ? []
      : [
          {
            id: "here",
            x: place.xShare,
            y: place.yShare,
            label: "+",
            title: t("hirer.missed.here"),
            isNew: true,
          },
        ];
  return (
    <>
      <label className="field">
        <span className="field-label">{t("hirer.missed.side")}</span>
        <select
          className="input"
          value={view}
          onChange={(event) => onView(event.currentTarget.value as View)}
        >
          {SIDES.map((side) => (
            <option key={side} value={side}>
              {t(`hirer.missed.view.${side}`)}
            </option>
          ))}
        </select>
      </label>
      <label className="field">
        <span className="field-label">{t("hirer.missed.part")}</span>
        <select
          className="input"
          value={place?.part ?? ""}
          aria-invalid={error !== null}
          aria-describedby={`${id}-error`}
          onChange={(event) => choose(event.currentTarget.value)}
        >
          <option value="">{t("hirer.missed.partNone")}</option>
          {parts.map(({ part, name: message }) => (
            <option key={part} value={part}>
              {partWords(message)}
            </option>
          ))}
        </select>
      </label>
      <p id={`${id}-error`} className="field-error">
        {error}
      </p>
      <p className="quiet">{t("hirer.missed.tap")}</p>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: the list above does the same by keyboard */}
      {/* biome-ignore lint/a11y/useKeyWithClickEvents: the list above does the same by keyboard */}
      <div ref={drawing} className="missed-drawing" onClick={touch}>
        <SvgView
          node={drawVehicle(vehicle, view, {
            nameOf: partWords,
            title: t("hirer.missed.drawing", { view: t(`hirer.missed.view.${view}`), name }),
            marks: here,
            ...(place === null ? {} : { chosen: place.part }),
          })}
        />
      </div>
    </>
  );
}

/** The middle of a part on the drawing; of the whole drawing where the part is not on it. */
function middleOf(drawing: HTMLElement | null, part: string): { readonly x: number; readonly y: number } {
  const box = drawing?.querySelector("svg")?.getBoundingClientRect();
  const own = drawing?.querySelector(`[data-part="${CSS.escape(part)}"]`)?.getBoundingClientRect();
  if (box === undefined || own === undefined) return { x: 0.5, y: 0.5 };
  return {
    x: share(own.left + own.width / 2, box.left, box.width),
    y: share(own.top + own.height / 2, box.top, box.height),
  };
}
