import { useState } from "react";
import { client, type Schemas } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { Button, NumberField, SelectField, TextField } from "../../../parts/index.ts";
import { dateText, t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import { type PieceProps, useKeep } from "./use-keep.ts";

type Entry = Schemas["NewUpkeep"];
const ACTS = ["flushed", "sanitised"] as const;
const STATES = ["inUse", "drained", "winterised", "laidUp"] as const;

/** Damp as read, what was done to the fresh water, and whether the vehicle is drained against frost. */
export function Readings({ id, upkeep }: PieceProps) {
  const { damp, water, frost } = upkeep;
  return (
    <section className="card stack" aria-labelledby="damp-title">
      <h2 id="damp-title">{t("upkeep.damp")}</h2>
      {damp.length === 0 && <p className="quiet">{t("upkeep.noDamp")}</p>}
      <ul>
        {damp.slice(0, 8).map((one) => (
          <li key={one.id}>
            {t("upkeep.dampLine", {
              on: dateText(one.on, "short"),
              position: one.position,
              percent: one.percent,
              band: one.band,
            })}
          </li>
        ))}
      </ul>
      <EnterDamp id={id} upkeep={upkeep} />
      <h2>{t("upkeep.waterAndFrost")}</h2>
      {water.length === 0 && frost === null && <p className="quiet">{t("upkeep.noWater")}</p>}
      <ul>
        {water.slice(0, 4).map(({ id: key, on, act, who }) => (
          <li key={key}>{t("upkeep.waterLine", { on: dateText(on, "short"), act, who })}</li>
        ))}
      </ul>
      {frost !== null && (
        <p>{t("upkeep.frostLine", { on: dateText(frost.on, "short"), state: frost.state })}</p>
      )}
      <EnterWater id={id} upkeep={upkeep} />
    </section>
  );
}

const useEnter = (id: string) =>
  useKeep(id, (body: Entry) =>
    take(client.POST("/api/vehicles/{id}/upkeep", { params: { path: { id } }, body })),
  );

const NO_DAMP = { position: "", percent: null as number | null, meter: "", weather: "", who: "" };

function EnterDamp({ id, upkeep }: PieceProps) {
  const [draft, setDraft] = useState(NO_DAMP);
  const enter = useEnter(id);
  const { position, percent, meter, weather, who } = draft;
  const isWhole = percent !== null && [position, meter, weather, who].every((text) => text.trim() !== "");
  const keep = () => {
    if (percent === null) return;
    enter.mutate(
      { kind: "damp", on: upkeep.today, position, percent, meter, weather, who },
      // the next reading is taken with the same meter in the same weather
      { onSuccess: () => setDraft({ ...draft, position: "", percent: null }) },
    );
  };
  const text = (field: "position" | "meter" | "weather" | "who") => ({
    label: t(`evidence.damp.${field}`),
    value: draft[field],
    onChange: (value: string) => setDraft({ ...draft, [field]: value }),
    required: true,
  });
  return (
    <details>
      <summary className="fold">{t("evidence.damp.enter")}</summary>
      <div className="stack">
        <TextField {...text("position")} />
        <NumberField
          label={t("evidence.damp.percent")}
          unit="%"
          value={percent}
          min={0}
          max={100}
          onChange={(value) => setDraft({ ...draft, percent: value })}
        />
        <TextField {...text("meter")} />
        <TextField {...text("weather")} />
        <TextField {...text("who")} />
        <FailureNote failure={enter.error} />
        <Button isDisabled={!isWhole || enter.isPending} onPress={keep}>
          {t("upkeep.keep")}
        </Button>
      </div>
    </details>
  );
}

function EnterWater({ id, upkeep }: PieceProps) {
  const [act, setAct] = useState<(typeof ACTS)[number]>("flushed");
  const [state, setState] = useState<(typeof STATES)[number]>("drained");
  const [who, setWho] = useState("");
  const enter = useEnter(id);
  const on = upkeep.today;
  const isOff = who.trim() === "" || enter.isPending;
  return (
    <details>
      <summary className="fold">{t("evidence.water.enter")}</summary>
      <div className="stack">
        <TextField label={t("upkeep.who")} value={who} onChange={setWho} required />
        <SelectField
          label={t("evidence.water.act")}
          value={act}
          options={ACTS.map((value) => ({ value, label: t("evidence.water.done", { act: value }) }))}
          onChange={setAct}
        />
        <Button isDisabled={isOff} onPress={() => enter.mutate({ kind: "water", on, who, act })}>
          {t("evidence.water.keep")}
        </Button>
        <SelectField
          label={t("evidence.frost.state")}
          value={state}
          options={STATES.map((value) => ({ value, label: t("evidence.frost.is", { state: value }) }))}
          onChange={setState}
        />
        <Button isDisabled={isOff} onPress={() => enter.mutate({ kind: "frost", on, who, state })}>
          {t("evidence.frost.keep")}
        </Button>
        <FailureNote failure={enter.error} />
      </div>
    </details>
  );
}
