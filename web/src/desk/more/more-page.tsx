import { Link } from "wouter";
import { t } from "../../parts/words.ts";
import { useSignedIn } from "../session.ts";
import { usePageTitle } from "../use-page-title.ts";
import "../import/import.css";

/** What is not needed every hour: kept off the bar, so that the bar stays short. */
export default function MorePage() {
  usePageTitle(t("import.moreTitle"));
  const { may } = useSignedIn();
  const pages = [
    { to: "/terms", act: "terms.see", title: t("rates.title"), text: t("rates.more") },
    { to: "/terms/prices", act: "terms.see", title: t("firmPrices.title"), text: t("firmPrices.more") },
    { to: "/depot", act: "terms.see", title: t("depot.title"), text: t("depot.more") },
    { to: "/depot/times", act: "terms.see", title: t("times.title"), text: t("times.more") },
    { to: "/depot/figures", act: "terms.see", title: t("figures.title"), text: t("figures.more") },
    { to: "/accounts", act: "account.manage", title: t("accounts.title"), text: t("accounts.more") },
    { to: "/own", act: "day.see", title: t("accounts.own"), text: t("accounts.ownMore") },
    { to: "/outcomes", act: "vehicle.see", title: t("outcomes.title"), text: t("outcomes.more") },
    { to: "/stock", act: "hire.see", title: t("stock.title"), text: t("stock.moreText") },
    { to: "/messages", act: "customer.see", title: t("messages.title"), text: t("import.moreMessages") },
    { to: "/import", act: "link.create", title: t("import.title"), text: t("import.moreImport") },
    { to: "/import", act: "hire.write", title: t("calendar.title"), text: t("import.moreCalendars") },
  ].filter(({ act }) => may.includes(act));
  return (
    <>
      <div className="page-head">
        <h1>{t("import.moreTitle")}</h1>
      </div>
      <section className="card">
        <ul className="more-list">
          {pages.map(({ to, title, text }) => (
            <li key={title}>
              <Link href={to} className="link-row">
                {title}
              </Link>
              <p className="quiet">{text}</p>
            </li>
          ))}
        </ul>
      </section>
    </>
  );
}
