import { useState } from "react";
import { symptomText } from "../parts/finder/fault-words.ts";
import { ScrollMain } from "../parts/scroll-main.tsx";
import { t } from "../parts/words.ts";
import { CallLink } from "./call-link.tsx";
import { Kept } from "./fault-end.tsx";
import type { FaultProps } from "./fault-props.ts";

/** What can hurt someone: whom to ring stands first, nothing is looked for. */
export function StopPage({ hirer, guide, on }: FaultProps) {
  const [told, setTold] = useState(false);
  const tell = () => {
    if (told) return;
    setTold(true);
    const { symptom, systemId } = on;
    void hirer.tell({
      about: symptom.id,
      by: "hirer",
      systemId,
      outcome: "stop",
      answers: [],
      causes: [],
    });
  };
  return (
    <ScrollMain className="guide-main stack">
      <h1 className="danger-title">{symptomText(on.symptom.id)}</h1>
      <CallLink guide={guide} onCall={tell} />
      <p>{t("hirer.stop.or")}</p>
      <div className="two-calls">
        <a className="button button-danger" href="tel:112" onClick={tell}>
          {t("hirer.danger.ring", { number: "112" })}
        </a>
        <a className="button button-danger" href="tel:999" onClick={tell}>
          {t("hirer.danger.ring", { number: "999" })}
        </a>
      </div>
      <section className="card danger-card stack" aria-labelledby="stop">
        <h2 id="stop">{t("hirer.stop.title")}</h2>
        <ol>
          <li>{t("hirer.stop.1")}</li>
          <li>{t("hirer.stop.2")}</li>
          <li>{t("hirer.stop.3")}</li>
        </ol>
      </section>
      <a className="button button-wide" href="#danger">
        {t("hirer.stop.more")}
      </a>
      {told && <Kept hirer={hirer} />}
      <p className="quiet">{t("hirer.danger.numbers")}</p>
      <p className="quiet">{t("hirer.danger.caution")}</p>
      <a className="button" href="#wrong">
        {t("hirer.fault.all")}
      </a>
    </ScrollMain>
  );
}
