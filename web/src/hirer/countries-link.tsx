import type { Guide } from "../offline/database.ts";
import { t } from "../parts/words.ts";

/** The way to the rules of the countries of the route; a guide that was kept before they were sent has none. */
export function CountriesLink({ guide }: { readonly guide: Guide }) {
  const n = guide.countries?.length ?? 0;
  if (n === 0) return null;
  return (
    <a className="day-link" href="#countries">
      <strong className="day-name">{t("hirer.countries.title")}</strong>
      <span className="day-sub">{t("hirer.countries.sub", { n })}</span>
    </a>
  );
}
