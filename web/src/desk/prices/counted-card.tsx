import { Button } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import type { PieceProps } from "./piece-props.ts";
import { thingName } from "./price-words.ts";

/** What the fleet's walk-rounds count and nobody has priced: a settlement charges nothing for it. */
export function CountedCard({
  now,
  value,
  mayWrite,
  onAsk,
}: PieceProps & { readonly onAsk: (id: string) => void }) {
  const priced = new Set(value.kit.map(({ id }) => id));
  const open = now.counted.filter(
    ({ checkId, systemKind, charge }) => ![checkId, systemKind, charge ?? ""].some((id) => priced.has(id)),
  );
  if (open.length === 0) return null;
  return (
    <section className="card stack-tight" aria-labelledby="counted-title">
      <h2 id="counted-title">{t("firmPrices.counted.title")}</h2>
      <p>{t("firmPrices.counted.lead", { n: open.length })}</p>
      <ul>
        {open.map(({ checkId, vehicles }) => (
          <li key={checkId} className="price-line">
            <span>
              <strong>{thingName(checkId)}</strong>{" "}
              <span className="quiet">{t("firmPrices.counted.on", { n: vehicles })}</span>
            </span>
            <span>{t("firmPrices.none")}</span>
            {mayWrite && (
              <Button
                look="quiet"
                onPress={() => onAsk(checkId)}
                aria-label={t("firmPrices.enterFor", { name: thingName(checkId) })}
              >
                {t("firmPrices.enter")}
              </Button>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
