import { LOAD_ITEM_KINDS, loadPlaces, placeTakes, type VehicleDescription } from "@setfair/engine";
import type { Schemas } from "../../../api/client.ts";
import { problemAt } from "../../../api/failure.ts";
import { Button, classes, NumberField, SelectField, TextField, TickField } from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import { newThing, THING_KINDS } from "./load-draft.ts";
import { nameOf } from "./load-picture.tsx";

type Plan = Schemas["LoadPlan"];
type Item = Plan["items"][number];

export interface LoadThingsProps {
  readonly vehicle: VehicleDescription;
  readonly plan: Plan;
  readonly set: (plan: Plan) => void;
  readonly error: unknown;
  readonly chosen: string | null;
  readonly choose: (id: string | null) => void;
}

/** The things carried: what, how heavy, where; each can be picked up and put elsewhere. */
export function LoadThings(props: LoadThingsProps) {
  const { vehicle, plan, set } = props;
  const change = (id: string, item: Item | null) =>
    set({
      ...plan,
      items: plan.items.flatMap((before) => (before.id !== id ? [before] : item === null ? [] : [item])),
    });
  const add = (kind: (typeof THING_KINDS)[number]) =>
    set({ ...plan, items: [...plan.items, named(newThing(kind, vehicle, plan))] });
  return (
    <>
      {plan.items.map((item, k) => (
        <LoadThing key={item.id} {...props} item={item} at={k} change={change} />
      ))}
      <div className="row">
        {THING_KINDS.map((kind) => (
          <Button key={kind} onPress={() => add(kind)}>
            {kind === "other" ? t("load.add") : t("load.addKind", { kind: t(`load.thing.${kind}`) })}
          </Button>
        ))}
      </div>
    </>
  );
}

/** A thing of a usual kind goes by it; another one is named by hand. */
const named = (item: Item): Item =>
  item.kind === "other" ? item : { ...item, name: t(`load.thing.${item.kind ?? "other"}`) };

interface LoadThingProps extends LoadThingsProps {
  readonly item: Item;
  readonly at: number;
  readonly change: (id: string, item: Item | null) => void;
}

function LoadThing({ vehicle, plan, item, at, change, error, chosen, choose }: LoadThingProps) {
  const isChosen = chosen === item.id;
  const put = (more: Partial<Item>) => change(item.id, { ...item, ...more });
  return (
    <div className={classes("line-box", isChosen && "thing-chosen")}>
      <div className="sheet-fields">
        <TextField
          label={t("load.itemName")}
          value={item.name}
          onChange={(name) => put({ name })}
          error={problemAt(error, `items.${at}.name`)}
        />
        <NumberField
          label={t("load.mass")}
          unit="kg"
          min={0}
          max={1500}
          value={item.massKg}
          onChange={(n) => put({ massKg: n ?? 0 })}
          error={problemAt(error, `items.${at}.massKg`)}
        />
        <SelectField
          label={t("load.thingKind")}
          value={item.kind ?? "other"}
          onChange={(kind) => put({ kind })}
          options={LOAD_ITEM_KINDS.map((kind) => ({ value: kind, label: t(`load.thing.${kind}`) }))}
        />
        <ThingPlace vehicle={vehicle} items={plan.items} item={item} put={put} />
        <NumberField
          label={t("load.position")}
          unit="m"
          min={-1.5}
          max={9}
          step={0.1}
          value={item.behindFrontAxleM}
          onChange={(n) => put({ behindFrontAxleM: n ?? 0 })}
          error={problemAt(error, `items.${at}.behindFrontAxleM`)}
        />
        <div className="row">
          <TickField value={item.removable} onChange={(removable) => put({ removable })}>
            {t("load.removable")}
          </TickField>
          <TickField value={item.movable ?? false} onChange={(movable) => put({ movable })}>
            {t("load.movable")}
          </TickField>
        </div>
      </div>
      <div className="row">
        <Button look={isChosen ? "main" : "plain"} onPress={() => choose(isChosen ? null : item.id)}>
          {t(isChosen ? "load.putBack" : "load.pickUp", { name: nameOf(item) })}
        </Button>
        <Button look="quiet" onPress={() => change(item.id, null)}>
          {t("load.remove")}
        </Button>
      </div>
    </div>
  );
}

interface ThingPlaceProps {
  readonly vehicle: VehicleDescription;
  readonly items: Plan["items"];
  readonly item: Item;
  readonly put: (more: Partial<Item>) => void;
}

function ThingPlace({ vehicle, items, item, put }: ThingPlaceProps) {
  const kind = item.kind ?? "other";
  const places = loadPlaces(vehicle, {}, items).filter(
    ({ place }) => placeTakes(place, kind) || place === item.place,
  );
  if (places.length === 0) return null;
  return (
    <SelectField
      label={t("load.place")}
      value={item.place ?? null}
      onChange={(place) => {
        const found = places.find((each) => each.place === place);
        if (found !== undefined) put({ place, behindFrontAxleM: found.behindFrontAxleM });
      }}
      options={places.map(({ place }) => ({ value: place, label: t(`load.place.${place}`) }))}
    />
  );
}
