import { Link } from "wouter";
import type { Schemas } from "../../api/client.ts";
import { findingWords, ScrollX } from "../../parts/index.ts";
import { dateText, t } from "../../parts/words.ts";
import { placeOfHire } from "../where.ts";

/** The booked drivers whom these criteria would refer or refuse, or decide otherwise than those of today. */
export function PreviewTable({ answer }: { readonly answer: Schemas["InsurancePreviewAnswer"] }) {
  const { drivers, asked } = answer;
  return (
    <>
      <h2>{t("insurance.touched", { n: drivers.length, asked })}</h2>
      {drivers.length > 0 && (
        <ScrollX label={t("insurance.look")}>
          <table className="dense hires-table">
            <thead>
              <tr>
                <th>{t("insurance.driver")}</th>
                <th>{t("insurance.hire")}</th>
                <th>{t("insurance.today")}</th>
                <th>{t("insurance.then")}</th>
              </tr>
            </thead>
            <tbody>
              {drivers.map((each) => (
                <tr key={`${each.hireId} ${each.driver}`}>
                  <td>{each.driver}</td>
                  <td>
                    <Link href={placeOfHire(each.hireId)} className="link-row">
                      {each.customer}
                    </Link>{" "}
                    <span className="quiet nowrap">{dateText(each.from, "fullTime")}</span>
                  </td>
                  <td>{t(`insurance.judged.${each.today ?? "none"}`)}</td>
                  <td>
                    <strong>{t(`insurance.judged.${each.proposed}`)}</strong>
                    <div className="quiet">{each.findings.map(findingWords).join(" ")}</div>
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </ScrollX>
      )}
    </>
  );
}
