import type { Schemas } from "../../api/client.ts";
import { Button, FindingsList } from "../../parts/index.ts";
import { dateText, t } from "../../parts/words.ts";
import { stockKindText } from "../stock/stock-words.ts";

type Short = Schemas["HireStock"]["short"];

export interface ShortOfProps {
  readonly short: Short;
  /** what is short, said; left out where it is said elsewhere */
  readonly findings?: readonly Schemas["Finding"][];
  /** takes as many as are free; left out where nothing can be changed here */
  readonly onFewer?: (extra: string, count: number) => void;
}

/** Who has what there is not enough of, and when one is back. */
export function ShortOf({ short, findings = [], onFewer }: ShortOfProps) {
  if (short.length === 0) return null;
  const said = findings.filter(({ code }) => code === "stock.short");
  return (
    <div className="short-of stack-tight">
      {said.length > 0 && <FindingsList findings={said} />}
      {short.map(({ kind, holders, backAt, fitsFrom }) => (
        <section key={kind} aria-label={stockKindText(kind)}>
          {onFewer !== undefined && <Fewer kind={kind} free={freeOf(said, kind)} onFewer={onFewer} />}
          <h3>{t("stock.whoHas", { kind: stockKindText(kind) })}</h3>
          <ul>
            {holders.map((held) => (
              <li key={`${held.reference} ${held.from}`}>
                {t("stock.holder", {
                  customer: held.customer,
                  reference: held.reference,
                  count: held.count,
                  from: dateText(held.from, "dayTime"),
                  to: dateText(held.to, "dayTime"),
                })}
              </li>
            ))}
          </ul>
          {backAt !== null && <p>{t("stock.backAt", { at: dateText(backAt, "dayTime") })}</p>}
          <p className="quiet">
            {fitsFrom === null
              ? t("stock.neverEnough")
              : t("stock.fitsFrom", { at: dateText(fitsFrom, "dayTime") })}
          </p>
        </section>
      ))}
    </div>
  );
}

function freeOf(said: readonly Schemas["Finding"][], kind: string): number {
  const free = said.find(({ about }) => about === kind)?.facts.free;
  return typeof free === "number" ? free : 0;
}

function Fewer({
  kind,
  free,
  onFewer,
}: {
  readonly kind: string;
  readonly free: number;
  readonly onFewer: NonNullable<ShortOfProps["onFewer"]>;
}) {
  return (
    <div className="row spread">
      <span>{t("rates.change.fewerExtras", { n: free, what: stockKindText(kind) })}</span>
      <Button onPress={() => onFewer(kind, free)}>{t("rates.change.takeFewer", { n: free })}</Button>
    </div>
  );
}
