import type { Quote } from "@setfair/engine";
import { findingWords } from "../../../parts/index.ts";
import { dateText, figureText, moneyText, t } from "../../../parts/words.ts";
import type { HirePageData } from "../use-hire.ts";

export type PaperPurpose = "agreement" | "liability";

/** The text that is shown and signed; what is shown is what is kept. */
export function paperText(purpose: PaperPurpose, page: HirePageData): string {
  const { hire, money } = page;
  const quote = page.quote?.result as Quote | null | undefined;
  const vehicle =
    hire.vehicle === null ? t("desk.noVehicle") : `${hire.vehicle.name} ${hire.vehicle.registration}`;
  const facts = {
    hirer: page.customer.name,
    address: page.customer.address ?? "none",
    reference: hire.reference,
    vehicle,
    from: dateText(hire.from, "dayTime"),
    to: dateText(hire.to, "dayTime"),
  };
  if (purpose === "liability") return t("paper.liability.text", facts);
  const drivers = page.driverNames.map(({ name }) => name).join(", ");
  const conditions = page.conditions.map((finding, k) => `${k + 1}. ${findingWords(finding)}`).join("\n");
  return t("paper.agreement.text", {
    ...facts,
    drivers: drivers === "" ? page.customer.name : drivers,
    price: money === undefined ? "–" : moneyText(money.price),
    deposit: money === undefined ? "–" : moneyText(money.depositDue),
    excess: quote == null ? "–" : moneyText(quote.excess),
    allowance: quote == null ? "–" : figureText(quote.allowanceKm),
    conditions: conditions === "" ? t("paper.noConditions") : conditions,
  });
}
