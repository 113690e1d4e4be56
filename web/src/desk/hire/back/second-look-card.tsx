import type { Schemas } from "../../../api/client.ts";
import { dateText, has, say, t } from "../../../parts/words.ts";

interface SecondLookCardProps {
  readonly look: Schemas["SecondLook"];
}

/** What was too wet or dirty to judge: until when it holds the settlement, and where it is looked at. */
export function SecondLookCard({ look }: SecondLookCardProps) {
  if (look.due.length === 0) return null;
  return (
    <section className="card conditions" aria-labelledby="second-look-title">
      <div className="row spread">
        <h2 id="second-look-title">{t("settling.look.title")}</h2>
        {look.holds && (
          <a href="/yard" className="button">
            {t("handover.openYard")}
          </a>
        )}
      </div>
      <p>
        {t(look.isOver ? "settling.look.over" : "settling.look.until", {
          at: dateText(look.until, "fullTime"),
        })}
      </p>
      <ul>
        {look.due.map((id) => (
          <li key={id}>{has(`check.${id}`) ? say(`check.${id}`) : id}</li>
        ))}
      </ul>
    </section>
  );
}
