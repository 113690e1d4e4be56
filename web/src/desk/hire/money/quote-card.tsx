import type { Quote, QuoteLine } from "@setfair/engine";
import { client } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { Button, FigureTap, FindingsList, ScrollX } from "../../../parts/index.ts";
import { dateText, has, moneyText, say, t } from "../../../parts/words.ts";
import { KeptMeanwhile } from "../../meanwhile/kept-meanwhile.tsx";
import { useGuardedDraft } from "../../meanwhile/use-guarded-draft.ts";
import { keepPart } from "../keep-part.ts";
import { type PartProps, useHireAct } from "../use-hire.ts";
import { type DiscountDraft, discountIn, discountOf, nightsPence } from "./discount-draft.ts";
import { DiscountForm } from "./discount-form.tsx";
import { type Extras, ExtrasForm, extrasOf } from "./extras-form.tsx";
import { useSizes } from "./use-sizes.ts";

const lineText = (line: QuoteLine): string => {
  const about = has(`quoteAbout.${line.about}`) ? say(`quoteAbout.${line.about}`) : line.about;
  return t(`quote.${line.code}`, { about, count: line.count, each: line.each });
};

function QuoteTable({ quote }: { readonly quote: Quote }) {
  return (
    <ScrollX label={t("quote.title")}>
      <table className="dense amounts">
        <thead>
          <tr>
            <th>{t("quote.what")}</th>
            <th>{t("quote.vat")}</th>
            <th>{t("money.amount")}</th>
          </tr>
        </thead>
        <tbody>
          {quote.lines.map((line) => (
            <tr key={`${line.code}.${line.about}`}>
              <td>{lineText(line)}</td>
              <td className="quiet">
                {t(`vat.${line.vat.kind}`, { rate: line.vat.ratePercent, money: moneyText(line.vat.amount) })}
              </td>
              <td>{moneyText(line.amount)}</td>
            </tr>
          ))}
          <tr className="amounts-total">
            <td>{t("quote.total")}</td>
            <td className="quiet">{t("quote.ofWhichVat", { money: moneyText(quote.vat) })}</td>
            <td>{moneyText(quote.total)}</td>
          </tr>
        </tbody>
      </table>
    </ScrollX>
  );
}

function Terms({ quote }: { readonly quote: Quote }) {
  return (
    <ul className="quiet">
      <li>
        {t("quote.nightsLabel")} <FigureTap figure={quote.nights} label={t("quote.nightsLabel")} /> ·{" "}
        {t("quote.allowance")} <FigureTap figure={quote.allowanceKm} label={t("quote.allowance")} /> ·{" "}
        {t("quote.over")} <FigureTap figure={quote.excessPencePerKm} label={t("quote.over")} />
      </li>
      <li>
        {t("quote.toBook", {
          deposit: moneyText(quote.bookingDeposit),
          balance: moneyText(quote.balance),
          security: moneyText(quote.securityDeposit),
          excess: moneyText(quote.excess),
        })}
      </li>
      {quote.cancellation.map((step) => (
        <li key={step.atLeastDaysBefore}>
          {t("quote.cancellation", { days: step.atLeastDaysBefore, percent: step.keepPercent })}
        </li>
      ))}
      <li>{t("quote.holds", { until: dateText(quote.holdsUntil, "full") })}</li>
    </ul>
  );
}

/** What is asked for; what it costs is the server's to say. */
interface Wish {
  readonly extras: Extras;
  readonly discount: DiscountDraft;
}

/** The price with every compulsory charge in it; accepted, it stays as it was shown. */
export function QuoteCard({ page }: PartProps) {
  const { id, stage, vehicle } = page.hire;
  const draft = useGuardedDraft<Wish>(`quoteWish.${id}`, {
    value: { extras: extrasOf(page), discount: discountIn(page) },
    version: page.versions.quote,
  });
  const { value, set, basedOn } = draft;
  const isOpen = stage === "enquiry" || stage === "quote";
  const sizing = useSizes(id, isOpen && vehicle !== null);
  const ask = useHireAct(async (accept: boolean) => {
    await sizing.keep(Object.keys(value.extras));
    const extras = Object.entries(value.extras).flatMap(([extra, count]) =>
      count > 0 ? [{ id: extra, count }] : [],
    );
    const given = discountOf(value.discount);
    const body = { extras, accept, ...(given === null ? {} : { discount: given }) };
    return keepPart(id, () =>
      take(client.POST("/api/hires/{id}/quote", { params: { path: { id }, query: { basedOn } }, body })),
    );
  }, draft.done);
  const { quote } = page;
  // the server sends the engine's own answer
  const result = quote?.result as Quote | null | undefined;
  const isAccepted = quote?.acceptedAt != null;
  return (
    <section className="card sheet" aria-labelledby="quote-title">
      <div className="row spread">
        <h2 id="quote-title">{t("quote.title")}</h2>
        {quote?.acceptedAt != null && (
          <span className="quiet">{t("quote.accepted", { at: dateText(quote.acceptedAt, "dayTime") })}</span>
        )}
      </div>
      {result !== null && result !== undefined && (
        <>
          <QuoteTable quote={result} />
          <Terms quote={result} />
        </>
      )}
      {quote != null && quote.findings.length > 0 && <FindingsList findings={quote.findings} />}
      {vehicle === null && <p className="quiet">{t("quote.needsVehicle")}</p>}
      {isOpen && vehicle !== null && !isAccepted && (
        <>
          <ExtrasForm value={value.extras} set={(extras) => set({ ...value, extras })} {...sizing} />
          <DiscountForm
            value={value.discount}
            set={(discount) => set({ ...value, discount })}
            nightsPence={nightsPence(page)}
          />
        </>
      )}
      <KeptMeanwhile draft={draft} failure={ask.error} onSettled={ask.reset} />
      {isOpen && vehicle !== null && !isAccepted && (
        <div className="row">
          <Button
            look={quote === null ? "main" : "plain"}
            onPress={() => ask.mutate(false)}
            isPending={ask.isPending}
          >
            {t(quote === null ? "quote.make" : "quote.again")}
          </Button>
          {result !== null && result !== undefined && !draft.isDirty && !sizing.isDirty && (
            <Button look="main" onPress={() => ask.mutate(true)} isPending={ask.isPending}>
              {t("quote.accept")}
            </Button>
          )}
        </div>
      )}
    </section>
  );
}
