import { COUNTRIES_KNOWN, type CountriesResult } from "@setfair/engine";
import { client } from "../../../api/client.ts";
import { problemAt, take } from "../../../api/failure.ts";
import { DateField, NumberField, TickField } from "../../../parts/index.ts";
import { dateText, t } from "../../../parts/words.ts";
import { KeepRow } from "../../keep-row.tsx";
import { KeptMeanwhile } from "../../meanwhile/kept-meanwhile.tsx";
import { useGuardedDraft } from "../../meanwhile/use-guarded-draft.ts";
import { keepPart } from "../keep-part.ts";
import { type PartProps, useHireAct } from "../use-hire.ts";
import type { Abroad, AbroadFormProps, AbroadState } from "./abroad-form.ts";
import { Crossings } from "./crossings.tsx";

/** A list with one entry put in or taken out. */
const toggled = (list: readonly string[], entry: string, isIn: boolean): string[] =>
  isIn ? [...new Set([...list, entry])] : list.filter((each) => each !== entry);

interface GotTogetherProps extends PartProps {
  readonly state: AbroadState;
  readonly countries: CountriesResult;
}

/** Papers, kit, stickers and crossings, ticked as they are got. */
export function GotTogether({ page, state, countries }: GotTogetherProps) {
  const { id } = page.hire;
  const draft = useGuardedDraft<Abroad>(`abroad.${id}`, { value: state.abroad, version: state.version });
  const save = useHireAct(
    () =>
      keepPart(id, () =>
        take(
          client.PUT("/api/hires/{id}/abroad", {
            params: { path: { id }, query: { basedOn: draft.basedOn } },
            body: draft.value,
          }),
        ),
      ),
    draft.done,
  );
  const form = { value: draft.value, set: draft.set, error: save.error };
  const isAbroad = countries.cards.some(({ country }) => country !== state.home);
  return (
    <section className="card sheet" aria-labelledby="got-title">
      <h2 id="got-title">{t("abroad.ready")}</h2>
      <Through {...form} home={state.home} />
      {isAbroad && (
        <>
          <Papers {...form} />
          <ToGet {...form} countries={countries} />
          <KeepOut {...form} countries={countries} />
          <Kit {...form} countries={countries} home={state.home} />
          <Crossings {...form} depart={page.hire.from.slice(0, 10)} />
          <Gas {...form} />
        </>
      )}
      <KeptMeanwhile draft={draft} failure={save.error} onSettled={save.reset} />
      <KeepRow label={t("abroad.save")} save={save} draft={draft} />
    </section>
  );
}

function Through({ value, set, home }: AbroadFormProps & { readonly home: string }) {
  return (
    <details>
      <summary className="fold">{t("abroad.through")}</summary>
      <div className="ticks">
        {COUNTRIES_KNOWN.filter((country) => country !== home).map((country) => (
          <TickField
            key={country}
            value={value.through.includes(country)}
            onChange={(on) => set({ ...value, through: toggled(value.through, country, on) })}
          >
            {t("country.name", { country })}
          </TickField>
        ))}
      </div>
    </details>
  );
}

function Papers({ value, set, error }: AbroadFormProps) {
  const { certificate, originalDocument } = value.papers;
  const setDay = (name: "validFrom" | "validTo", day: string) => {
    const next = { validFrom: day, validTo: day, ...certificate, [name]: day };
    const { certificate: _, ...rest } = value.papers;
    set({ ...value, papers: day === "" ? rest : { ...rest, certificate: next } });
  };
  return (
    <fieldset className="fields">
      <legend>{t("abroad.papers")}</legend>
      <div className="sheet-fields">
        <DateField
          label={t("abroad.certificateFrom")}
          value={certificate?.validFrom ?? ""}
          onChange={(day) => setDay("validFrom", day)}
        />
        <DateField
          label={t("abroad.certificateTo")}
          value={certificate?.validTo ?? ""}
          onChange={(day) => setDay("validTo", day)}
          error={problemAt(error, "papers.certificate.validTo")}
        />
      </div>
      <TickField
        value={originalDocument === true}
        onChange={(on) => set({ ...value, papers: { ...value.papers, originalDocument: on } })}
      >
        {t("abroad.original")}
      </TickField>
      <TickField value={value.plateShowsUk} onChange={(plateShowsUk) => set({ ...value, plateShowsUk })}>
        {t("abroad.plateUk")}
      </TickField>
      <TickField value={value.overhang} onChange={(overhang) => set({ ...value, overhang })}>
        {t("abroad.overhang")}
      </TickField>
    </fieldset>
  );
}

function ToGet({ value, set, countries }: AbroadFormProps & { readonly countries: CountriesResult }) {
  const tasks = countries.tasks.filter(({ ruleId }) => !ruleId.startsWith("kit."));
  return (
    <fieldset className="fields">
      <legend>{t("abroad.toGet")}</legend>
      {tasks.length === 0 && <p>{t("abroad.nothingToGet")}</p>}
      {tasks.map(({ ruleId, country, doBy }) => (
        <TickField
          key={ruleId}
          value={value.got.includes(ruleId)}
          onChange={(on) => set({ ...value, got: toggled(value.got, ruleId, on) })}
        >
          {t("country.name", { country })}: {t("country.item", { item: ruleId.replaceAll(".", "_") })},{" "}
          {t("abroad.by", { doBy: dateText(doBy, "short") })}
        </TickField>
      ))}
    </fieldset>
  );
}

/** What is asked for only in zones or on motorways need not be got by a route that keeps out of them. */
function KeepOut({ value, set, countries }: AbroadFormProps & { readonly countries: CountriesResult }) {
  const tasks = countries.tasks.filter(
    ({ avoidable, ruleId }) => avoidable !== null && !value.got.includes(ruleId),
  );
  if (tasks.length === 0) return null;
  const avoided = value.avoided ?? [];
  return (
    <fieldset className="fields">
      <legend>{t("abroad.keepOut")}</legend>
      <p className="quiet">{t("abroad.keepOut.note")}</p>
      {tasks.map(({ ruleId, country, avoidable }) => (
        <TickField
          key={ruleId}
          value={avoided.includes(ruleId)}
          onChange={(on) => set({ ...value, avoided: toggled(avoided, ruleId, on) })}
        >
          {t("abroad.keepOut.of", { country: t("country.name", { country }), of: avoidable })}
        </TickField>
      ))}
    </fieldset>
  );
}

function Kit({
  value,
  set,
  countries,
  home,
}: AbroadFormProps & { readonly countries: CountriesResult; readonly home: string }) {
  const abroad = countries.cards.filter(({ country }) => country !== home);
  // chains are no country's kit all year; the season's rules ask for them or for winter tyres
  const things = new Set([...abroad.flatMap(({ kit }) => kit.map(({ thing }) => thing)), "snowChains"]);
  const adaptors = new Set(abroad.flatMap(({ lpgFiller }) => lpgFiller?.adaptors ?? []));
  const tick = (id: string, words: string) => (
    <TickField
      key={id}
      value={value.kitAboard.includes(id)}
      onChange={(on) => set({ ...value, kitAboard: toggled(value.kitAboard, id, on) })}
    >
      {words}
    </TickField>
  );
  return (
    <fieldset className="fields">
      <legend>{t("abroad.kit")}</legend>
      <div className="ticks">
        {[...things].map((thing) => tick(thing, t("country.thing", { thing })))}
        {[...adaptors].map((adaptor) =>
          tick(`adaptor.${adaptor}`, `${t("abroad.filler")}: ${t("country.adaptor", { adaptor })}`),
        )}
      </div>
    </fieldset>
  );
}

function Gas({ value, set, error }: AbroadFormProps) {
  if (!value.crossings.some(({ kind }) => kind === "tunnel")) return null;
  const { gaugeWorks, fillShare, ...rest } = value;
  const put = (seen: boolean | undefined, share: number | undefined) =>
    set({
      ...rest,
      ...(seen === true ? { gaugeWorks: seen } : {}),
      ...(share === undefined ? {} : { fillShare: share }),
    });
  return (
    <div className="sheet-fields">
      <TickField value={gaugeWorks === true} onChange={(on) => put(on, fillShare)}>
        {t("abroad.gauge")}
      </TickField>
      <NumberField
        label={t("abroad.fill")}
        unit="%"
        min={0}
        max={100}
        value={fillShare === undefined ? null : Math.round(fillShare * 100)}
        onChange={(n) => put(gaugeWorks, n === null ? undefined : n / 100)}
        error={problemAt(error, "fillShare")}
      />
    </div>
  );
}
