import { drawLoad, type LoadAxle, type LoadBox, type LoadDot } from "@setfair/drawing";
import {
  type LoadAgainstLimit,
  type LoadPlan,
  type LoadResult,
  loadPlaces,
  placeTakes,
  type VehicleDescription,
} from "@setfair/engine";
import { type KeyboardEvent, type MouseEvent, useEffect, useRef } from "react";
import type { Schemas } from "../../../api/client.ts";
import { SvgView } from "../../../parts/svg-view.tsx";
import { figureText, t } from "../../../parts/words.ts";

type Plan = Schemas["LoadPlan"];
type Item = Plan["items"][number];

export interface LoadPictureProps {
  readonly vehicle: VehicleDescription;
  readonly plan: Plan;
  readonly result: LoadResult;
  /** the thing that is being moved */
  readonly chosen: Item | undefined;
  readonly onPlace: (place: NonNullable<Item["place"]>, behindFrontAxleM: number) => void;
}

/** The vehicle with its masses along it; a touch on a place puts the chosen thing there. */
export function LoadPictureView({ vehicle, plan, result, chosen, onPlace }: LoadPictureProps) {
  const node = drawLoad(vehicle, {
    title: t("load.picture", { name: vehicle.name }),
    boxes: boxesOf(vehicle, plan, chosen),
    dots: dotsOf(result),
    front: axle("load.front", result.front, result.tyres?.front),
    rear: axle("load.rear", result.rear, result.tyres?.rear),
    total: axle("load.total", result.total),
  });
  const placed = (target: EventTarget) => {
    const name =
      target instanceof Element ? target.closest("[data-place]")?.getAttribute("data-place") : null;
    const found = loadPlaces(vehicle, {}, plan.items).find((each) => each.place === name);
    if (found === undefined || chosen === undefined || !placeTakes(found.place, chosen.kind ?? "other"))
      return false;
    onPlace(found.place, found.behindFrontAxleM);
    return true;
  };
  const keyed = (event: KeyboardEvent<HTMLDivElement>) => {
    if (event.key !== "Enter" && event.key !== " ") return;
    if (placed(event.target)) event.preventDefault();
  };
  const box = useRef<HTMLDivElement>(null);
  const moving = chosen?.id;
  useEffect(() => {
    // the drawing may stand far above the thing that was picked up
    if (moving !== undefined) box.current?.querySelector<SVGElement>(".load-place-open")?.focus();
  }, [moving]);
  return (
    // the places inside carry the roles and take the keyboard; this only gathers their events
    // biome-ignore lint/a11y/noStaticElementInteractions: the touchable things are the groups inside the drawing
    <div
      ref={box}
      className="load-drawing"
      onClick={(event: MouseEvent<HTMLDivElement>) => placed(event.target)}
      onKeyDown={keyed}
    >
      <SvgView node={node} />
      <p className="quiet">
        {chosen === undefined ? t("load.pictureNote") : t("load.choosePlace", { name: nameOf(chosen) })}
      </p>
    </div>
  );
}

export const nameOf = (item: Item): string =>
  item.name === "" ? t(`load.thing.${item.kind ?? "other"}`) : item.name;

function boxesOf(vehicle: VehicleDescription, plan: Plan, chosen: Item | undefined): readonly LoadBox[] {
  return loadPlaces(vehicle, plan.placeLimitsKg as LoadPlan["placeLimitsKg"], plan.items).flatMap((each) => {
    const here = plan.items.filter((item) => item.place === each.place);
    const massKg = here.reduce((sum, item) => sum + item.massKg, 0);
    const isOpen =
      chosen !== undefined && chosen.place !== each.place && placeTakes(each.place, chosen.kind ?? "other");
    // nothing of the hirer's goes on the roof
    if (each.place === "roof" && massKg === 0) return [];
    const kg = figureText({ value: massKg, unit: "kg" });
    const place = t(`load.place.${each.place}`);
    return [
      {
        place: each.place,
        title: isOpen
          ? t("load.putHere", { place, name: nameOf(chosen) })
          : t("load.placeHolds", { place, kg }),
        label: massKg > 0 ? kg : "",
        behindFrontAxleM: each.behindFrontAxleM,
        massKg,
        isOver: each.limit !== null && massKg + each.ownKg > each.limit.value,
        isOpen,
      },
    ];
  });
}

/** What stays where it is: people at their seats, water and gas in their lockers. */
function dotsOf(result: LoadResult): readonly LoadDot[] {
  const people = result.lines.filter(
    ({ kind }) => kind === "driver" || kind === "traveller" || kind === "dog",
  );
  const still = result.lines.filter(({ kind }) => kind === "water" || kind === "cylinder");
  const dot = (line: LoadResult["lines"][number], heightM: number, besideM = 0): LoadDot => ({
    id: line.id,
    title: t("load.dot", { name: t(`load.kind.${line.kind}`), kg: figureText(line.mass) }),
    behindFrontAxleM: (line.behindFrontAxleM ?? 0) + besideM,
    heightM,
    massKg: line.mass.value,
  });
  return [
    ...still.map((line) => dot(line, 0.4)),
    ...people.map((line) => {
      const row = people.filter(({ behindFrontAxleM }) => behindFrontAxleM === line.behindFrontAxleM);
      return dot(line, 1.25, (row.indexOf(line) - (row.length - 1) / 2) * 0.38);
    }),
  ];
}

function axle(
  name: "load.front" | "load.rear" | "load.total",
  against: LoadAgainstLimit,
  tyres?: LoadAgainstLimit,
): LoadAxle {
  const kg = (value: number) => figureText({ value, unit: "kg" });
  const facts = { name: t(name), load: kg(against.load.value), limit: kg(against.limit.value) };
  const { load, limit } = facts;
  return {
    title: t("load.axleTitle", {
      ...facts,
      hasTyres: String(tyres !== undefined),
      tyres: tyres === undefined ? "" : kg(tyres.limit.value),
    }),
    label: facts.name,
    figures: t("load.axleFigures", { load, limit }),
    loadKg: against.load.value,
    limitKg: against.limit.value,
    tyresKg: tyres?.limit.value ?? null,
  };
}
