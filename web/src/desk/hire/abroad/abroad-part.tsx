import type { CountriesResult } from "@setfair/engine";
import { useQuery } from "@tanstack/react-query";
import { client } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { FindingsList, Loading } from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import { HireStockCard } from "../../stock/hire-stock-card.tsx";
import type { PartProps } from "../use-hire.ts";
import type { AbroadState } from "./abroad-form.ts";
import { CountryCardView } from "./country-card-view.tsx";
import { GotTogether } from "./got-together.tsx";
import "./abroad.css";

/** The countries of the route: what still stops the hire there, what was got together, and a card for each country. */
export default function AbroadPart({ page }: PartProps) {
  const { id } = page.hire;
  const state = useQuery({
    queryKey: ["abroad", id, page.version],
    queryFn: () => take(client.GET("/api/hires/{id}/abroad", { params: { path: { id } } })),
    placeholderData: (before: AbroadState | undefined) => before,
  });
  if (state.isPending) return <Loading />;
  if (state.isError) return <FailureNote failure={state.error} onAgain={() => void state.refetch()} />;
  // the server sends the engine's own answer
  const countries = state.data.countries as CountriesResult | null;
  if (countries === null) return <p className="card">{t("abroad.needsTrip")}</p>;
  return <Abroad page={page} state={state.data} countries={countries} />;
}

interface AbroadProps extends PartProps {
  readonly state: AbroadState;
  readonly countries: CountriesResult;
}

function Abroad({ page, state, countries }: AbroadProps) {
  const { findings, home } = state;
  const cards = countries.cards.filter(({ country }) => country !== home);
  const open = findings.filter(({ severity }) => severity !== "note" && severity !== "condition");
  return (
    <>
      <section className="card" aria-labelledby="abroad-title">
        <h2 id="abroad-title">{t("abroad.title", { n: open.length })}</h2>
        {cards.length === 0 ? <p>{t("abroad.homeOnly")}</p> : <FindingsList findings={findings} />}
        <p className="quiet">{t("abroad.caution")}</p>
      </section>
      <HireStockCard hireId={page.hire.id} stage={page.hire.stage} />
      <GotTogether page={page} state={state} countries={countries} />
      {cards.map((card) => (
        <CountryCardView key={card.country} card={card} />
      ))}
    </>
  );
}
