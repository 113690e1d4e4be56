import { useState } from "react";
import { DateField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";

const monthStart = (today: string): string => `${today.slice(0, 7)}-01`;

/** Postings of a span of days as a file for the accountant. */
export function ExportCard({ today }: { readonly today: string }) {
  const [from, setFrom] = useState(monthStart(today));
  const [to, setTo] = useState(today);
  const isWrong = from === "" || to === "" || to < from;
  return (
    <section className="card stack-tight" aria-labelledby="money-export">
      <h2 id="money-export">{t("export.title")}</h2>
      <p className="quiet">{t("export.lead")}</p>
      <div className="sheet-fields">
        <DateField label={t("export.from")} value={from} onChange={setFrom} />
        <DateField
          label={t("export.to")}
          value={to}
          onChange={setTo}
          error={to !== "" && to < from ? t("export.order") : undefined}
        />
      </div>
      {isWrong ? (
        <p className="quiet">{t("export.choose")}</p>
      ) : (
        <p>
          <a
            className="button"
            href={`/api/money/postings?from=${encodeURIComponent(from)}&to=${encodeURIComponent(to)}`}
            download
          >
            {t("export.get")}
          </a>
        </p>
      )}
    </section>
  );
}
