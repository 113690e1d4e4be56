import { axleLoads } from "../../formulas/mass.ts";
import { specsOf } from "../../vehicle/specs-of.ts";
import type { LoadItem, LoadItemKind, LoadPlace } from "../situation.ts";
import { LOAD_DEFAULTS as D, TROUBLE } from "./defaults.ts";
import type { ChangeGroup, ChangeOption } from "./least-change.ts";
import type { MassLine } from "./load-lines.ts";
import { type LoadPlaceOf, loadPlaces, placeTakes } from "./load-places.ts";
import type { LoadChangeStep, LoadInput } from "./types.ts";

type Option = ChangeOption<LoadChangeStep>;
type Group = ChangeGroup<LoadChangeStep>;

/** What the search for the least change is about: the loads with a limit, and what may be done. */
export interface ChangeModel {
  readonly input: LoadInput;
  readonly lines: readonly MassLine[];
  /** places whose label is counted, in the order of the loads after total, front and rear */
  readonly limited: readonly LoadPlace[];
}

/** Most bicycles whose every combination is looked at; a larger party's come off one by one and the rack stays. */
const MOST_BIKES = 5;

/** Every act that can really be done, in groups of which one option is taken each. */
export function changeGroups(model: ChangeModel): readonly Group[] {
  const { input } = model;
  const onRack = input.load.items.filter(({ kind }) => kind === "bike" || kind === "bikeRack");
  const bikes = onRack.filter(({ kind }) => kind === "bike").length <= MOST_BIKES ? onRack : [];
  const others = input.load.items.filter((item) => !bikes.includes(item));
  return [
    rackGroup(model, bikes),
    ...others.map((item) => itemOptions(model, item)),
    ...fittedGroups(model, bikes.length > 0),
    cylinderGroup(model),
    waterGroup(model),
  ].filter((group) => group.length > 0);
}

/** What a mass at a place takes from each load, kg; minus where it is put there. */
function takesOf(
  { input, limited }: ChangeModel,
  massKg: number,
  atM: number,
  place?: LoadPlace,
): readonly number[] {
  const { frontKg, rearKg } = axleLoads(input.vehicle.dimensions.wheelbaseM, [
    { massKg, behindFrontAxleM: atM },
  ]);
  return [massKg, frontKg, rearKg, ...limited.map((each) => (each === place ? massKg : 0))];
}

const kindOf = ({ kind }: LoadItem): LoadItemKind => kind ?? "other";

function troubleOfLeaving(kind: LoadItemKind, massKg: number): number {
  if (kind === "childSeat") return Infinity;
  const { effort, worth, perTenKg } = TROUBLE.leave[kind];
  return effort * worth * (perTenKg ? massKg / 10 : 1);
}

function itemOptions(model: ChangeModel, item: LoadItem): Option[] {
  const kind = kindOf(item);
  const canStay = item.removable && kind !== "childSeat" && item.massKg > 0;
  return [
    ...(canStay && (kind === "luggage" || kind === "food") ? lessOptions(model, item) : []),
    ...(canStay ? [leaveOption(model, item)] : []),
    ...(item.movable === true && item.place !== undefined ? moveOptions(model, item, item.place) : []),
  ];
}

function leaveOption(model: ChangeModel, item: LoadItem): Option {
  return {
    trouble: troubleOfLeaving(kindOf(item), item.massKg),
    kg: item.massKg,
    takes: takesOf(model, item.massKg, item.behindFrontAxleM, item.place),
    acts: [{ kind: "leaveItem", id: `item.${item.id}`, name: item.name, byKg: item.massKg }],
  };
}

function lessOptions(model: ChangeModel, item: LoadItem): Option[] {
  const steps = Math.ceil(item.massKg / D.itemStepKg) - 1;
  return Array.from({ length: steps }, (_, k) => {
    const byKg = (k + 1) * D.itemStepKg;
    return {
      trouble: troubleOfLeaving(kindOf(item), byKg),
      kg: byKg,
      takes: takesOf(model, byKg, item.behindFrontAxleM, item.place),
      acts: [
        {
          kind: "lessOfItem",
          id: `item.${item.id}`,
          name: item.name,
          byKg,
          leftKg: item.massKg - byKg,
        } as const,
      ],
    };
  });
}

function moveOptions(model: ChangeModel, item: LoadItem, from: LoadPlace): Option[] {
  const before = takesOf(model, item.massKg, item.behindFrontAxleM, from);
  return placesFor(model, item, from).map(({ place, behindFrontAxleM }) => {
    const then = takesOf(model, item.massKg, behindFrontAxleM, place);
    const act = { kind: "moveItem", id: `item.${item.id}`, name: item.name, from, to: place } as const;
    return {
      trouble: TROUBLE.move,
      kg: 0,
      takes: before.map((kg, load) => kg - then[load]!),
      acts: [{ ...act, behindFrontAxleM, byKg: 0 }],
    };
  });
}

const placesFor = ({ input }: ChangeModel, item: LoadItem, from: LoadPlace): readonly LoadPlaceOf[] =>
  loadPlaces(input.vehicle, input.load.placeLimitsKg, input.load.items).filter(
    ({ place }) => place !== from && placeTakes(place, kindOf(item)),
  );

/** The bicycles in every combination, and the rack once none is left on it. */
function rackGroup(model: ChangeModel, items: readonly LoadItem[]): Option[] {
  const bikes = items.filter(({ kind }) => kind === "bike");
  const racks = items.filter((item) => item.kind === "bikeRack" && item.removable);
  const nothing: Option = { trouble: 0, kg: 0, takes: takesOf(model, 0, 0), acts: [] };
  const ways = bikes.reduce<readonly Option[]>(
    (so, bike) => so.flatMap((way) => [way, ...itemOptions(model, bike).map((option) => both(way, option))]),
    [nothing],
  );
  const bare = ways.filter(({ acts }) => acts.length === bikes.length);
  const withoutRack = bare.map((way) =>
    racks.map((rack) => leaveOption(model, rack)).reduce((so, rack) => both(so, rack), way),
  );
  return [...ways, ...(racks.length > 0 ? withoutRack : [])].filter(({ acts }) => acts.length > 0);
}

const both = (a: Option, b: Option): Option => ({
  trouble: a.trouble + b.trouble,
  kg: a.kg + b.kg,
  takes: a.takes.map((kg, load) => kg + b.takes[load]!),
  acts: [...a.acts, ...b.acts],
});

/** What is fitted and can be taken off; a fitted rack stays while bicycles of the plan are on it. */
function fittedGroups(model: ChangeModel, withBikes: boolean): Group[] {
  return model.lines
    .filter(
      ({ kind, removable, massKg, atM }) => kind === "fitted" && removable && massKg > 0 && atM !== null,
    )
    .filter(({ name }) => !(withBikes && name === "mass.bikeRack"))
    .map((line) => [
      {
        trouble: troubleOfLeaving("extra", line.massKg),
        kg: line.massKg,
        takes: takesOf(model, line.massKg, line.atM ?? 0),
        acts: [{ kind: "leaveItem", id: line.id, name: line.name, byKg: line.massKg }],
      },
    ]);
}

/** Each exchange cylinder but the last may stay behind. */
function cylinderGroup(model: ChangeModel): Group {
  const { vehicle, load } = model.input;
  const lpg = specsOf(vehicle, "lpg")[0];
  if (lpg === undefined || lpg.arrangement !== "exchange") return [];
  return Array.from({ length: Math.max(0, load.lpgCylinders - 1) }, (_, k) => {
    const byKg = (k + 1) * (lpg.kgEach + lpg.tareKgEach);
    return {
      trouble: (k + 1) * TROUBLE.cylinder,
      kg: byKg,
      takes: takesOf(model, byKg, lpg.behindFrontAxleM),
      acts: [
        { kind: "fewerCylinders", from: load.lpgCylinders, to: load.lpgCylinders - k - 1, byKg } as const,
      ],
    };
  });
}

function waterGroup(model: ChangeModel): Group {
  const { load, leastWaterLitres } = model.input;
  const line = model.lines.find(({ kind }) => kind === "water");
  const most = load.waterLitres - (leastWaterLitres ?? D.leastWaterLitres);
  if (line?.atM == null || most <= 0) return [];
  const atM = line.atM;
  const count = Math.ceil(most / D.waterStepLitres - 1e-9);
  return Array.from({ length: count }, (_, k) => {
    const litres = Math.min((k + 1) * D.waterStepLitres, most);
    const byKg = litres * D.waterKgPerLitre;
    return {
      trouble: (litres / 10) * TROUBLE.waterPerTenLitres,
      kg: byKg,
      takes: takesOf(model, byKg, atM),
      acts: [
        {
          kind: "lessWater",
          fromLitres: load.waterLitres,
          toLitres: load.waterLitres - litres,
          byKg,
        } as const,
      ],
    };
  });
}
