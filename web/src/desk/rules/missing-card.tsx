import { useQuery } from "@tanstack/react-query";
import { Link } from "wouter";
import { client, type Schemas } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { FindingText } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { countryName, ruleName, topicName } from "./rule-words.ts";
import "./rules.css";

type Missing = Schemas["MissingRules"]["missing"][number];

const isRule = ({ kind }: Missing) => kind.startsWith("rule");

/** What is meant, in words. */
function missingText({ kind, about, gate }: Missing): string {
  switch (kind) {
    case "findingNotChecked":
      return t("missing.findingNotChecked", { gate: t(`gate.${gate}`) });
    case "countryNotInData":
      return t("missing.countryNotInData", { country: countryName(about) });
    case "topicNotInData": {
      const [country = "", topic = ""] = about.split(".");
      return t("missing.topicNotInData", { country: countryName(country), topic: topicName(topic) });
    }
    case "gateNotChecked":
      return t("missing.gatesNotChecked", { list: t(`gate.${gate}`) });
    default:
      return t(`missing.${kind}`, { rule: `${placeOfRule(about)}${ruleName(about)}` });
  }
}

/** The country of a rule before its name, where the id says one. */
function placeOfRule(id: string): string {
  const country = id.split(".")[1] ?? "";
  return /^[a-z]{2}$/.test(country) ? `${countryName(country.toUpperCase())}: ` : "";
}

/** On a hire: what nobody checked and why, and rules of the route that rest on nothing firm. */
export function MissingCard({ hireId, version }: { readonly hireId: string; readonly version: number }) {
  const missing = useQuery({
    queryKey: ["missing", hireId, version],
    queryFn: () => take(client.GET("/api/hires/{id}/missing-rules", { params: { path: { id: hireId } } })),
  });
  if (missing.data === undefined) return null;
  const all = missing.data.missing;
  const gates = all.filter(({ kind }) => kind === "gateNotChecked");
  const unchecked = all.filter((each) => !isRule(each) && each.kind !== "gateNotChecked");
  const weak = all.filter(isRule);
  return (
    <section className="card" aria-labelledby="missing-title">
      <h2 id="missing-title">{t("missing.title", { n: gates.length + unchecked.length })}</h2>
      <p className="quiet">{t("missing.lead")}</p>
      <ul className="missing">
        {gates.length > 0 && (
          <li>
            {t("missing.gatesNotChecked", { list: gates.map(({ gate }) => t(`gate.${gate}`)).join(", ") })}
          </li>
        )}
        {unchecked.map((each) => (
          <li key={`${each.kind} ${each.about}`}>
            {missingText(each)} {each.finding !== null && <FindingText finding={each.finding} />}
          </li>
        ))}
      </ul>
      {weak.length > 0 && (
        <details>
          <summary className="fold">{t("missing.more", { n: weak.length })}</summary>
          <ul className="missing">
            {weak.map((each) => (
              <li key={each.about}>
                {missingText(each)}{" "}
                <Link
                  href={`/rules?q=${encodeURIComponent(each.about)}`}
                  aria-label={`${t("missing.openRule")}: ${ruleName(each.about)}`}
                >
                  {t("missing.openRule")}
                </Link>
                <div className="quiet">{each.source}</div>
              </li>
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}
