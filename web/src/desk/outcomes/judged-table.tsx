import type { Schemas } from "../../api/client.ts";
import { FigureTap, ScrollX } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { FEWEST, type Verdict, verdictOf } from "./verdict.ts";

type Judged = Schemas["ForecastOutcomes"]["stores"][number];

const LOOK: Readonly<Record<Verdict, string>> = {
  few: "quiet",
  good: "outcomes-good",
  narrow: "outcomes-off",
  wide: "outcomes-off",
  high: "outcomes-off",
  low: "outcomes-off",
};

/** Band and bias of each store, before and after what returns taught. */
export function JudgedTable({ stores }: { readonly stores: readonly Judged[] }) {
  return (
    <section className="card stack" aria-labelledby="judged-title">
      <h2 id="judged-title">{t("outcomes.byStore")}</h2>
      <ScrollX label={t("outcomes.byStore")}>
        <table className="dense outcomes-table">
          <thead>
            <tr>
              <th rowSpan={2}>{t("outcomes.store")}</th>
              <th rowSpan={2} className="num">
                {t("outcomes.count")}
              </th>
              <th colSpan={2}>
                {t("outcomes.band")} <small>({t("outcomes.bandMeant")})</small>
              </th>
              <th colSpan={2}>
                {t("outcomes.bias")} <small>({t("outcomes.biasMeant")})</small>
              </th>
              <th rowSpan={2}>{t("outcomes.verdict")}</th>
            </tr>
            <tr>
              <th>{t("outcomes.before")}</th>
              <th>{t("outcomes.after")}</th>
              <th>{t("outcomes.before")}</th>
              <th>{t("outcomes.after")}</th>
            </tr>
          </thead>
          <tbody>
            {stores.map((judged) => (
              <StoreRow key={judged.store} judged={judged} />
            ))}
          </tbody>
        </table>
      </ScrollX>
    </section>
  );
}

function StoreRow({ judged }: { readonly judged: Judged }) {
  const store = t(`store.${judged.store}`);
  const verdict = verdictOf(judged.after);
  const cell = (which: "before" | "after", what: "coverage" | "bias") => {
    const words = { store, which: t(which === "before" ? "outcomes.asDescribed" : "outcomes.asTaught") };
    const label = t(what === "coverage" ? "outcomes.coverageOf" : "outcomes.biasOf", words);
    return (
      <td className={which === "after" ? "num outcomes-now" : "num quiet"}>
        <FigureTap figure={judged[which][what]} label={label} />
      </td>
    );
  };
  return (
    <tr>
      <th scope="row">{store}</th>
      <td className="num">{judged.after.count}</td>
      {cell("before", "coverage")}
      {cell("after", "coverage")}
      {cell("before", "bias")}
      {cell("after", "bias")}
      <td className={LOOK[verdict]}>{t(`outcomes.${verdict}`, { least: FEWEST })}</td>
    </tr>
  );
}
