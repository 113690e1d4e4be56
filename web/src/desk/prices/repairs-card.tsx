import { MARK_KINDS } from "@setfair/engine";
import { useState } from "react";
import { Button } from "../../parts/index.ts";
import { moneyText, t } from "../../parts/words.ts";
import { Since, Stand } from "./kit-card.tsx";
import type { PieceProps } from "./piece-props.ts";
import { type RepairLine, repairId, stateOf, withLine } from "./price-draft.ts";
import { damageText, pounds, wearText } from "./price-words.ts";
import { RepairDialog } from "./repair-dialog.tsx";

/** What a dialog is open for: a line, or a new one of a thing. */
type Open = { readonly line: RepairLine } | { readonly of: string };

/** What repairs cost: for each thing its kinds of damage and sizes, and for which nobody has entered a price. */
export function RepairsCard(props: PieceProps) {
  const { now, value, change, mayWrite } = props;
  const [open, setOpen] = useState<Open | null>(null);
  const things = [...new Map(value.repairs.map(({ of, name }) => [of, name]))].sort(([, a], [, b]) =>
    a.localeCompare(b, "en"),
  );
  return (
    <section className="card stack-tight" aria-labelledby="repairs-title">
      <div className="row spread">
        <h2 id="repairs-title">{t("firmPrices.repairs.title")}</h2>
        {mayWrite && <Button onPress={() => setOpen({ of: "" })}>{t("firmPrices.repairs.add")}</Button>}
      </div>
      <p className="quiet">{t("firmPrices.repairs.lead")}</p>
      {things.length === 0 && <p>{t("firmPrices.repairs.none")}</p>}
      {things.map(([of, name]) => (
        <Thing key={of} {...props} of={of} name={name} onOpen={setOpen} />
      ))}
      {open !== null && (
        <RepairDialog
          now={now}
          repairs={value.repairs}
          line={"line" in open ? open.line : null}
          of={"line" in open ? open.line.of : open.of}
          onClose={() => setOpen(null)}
          onDone={(place, line) => {
            change({ repairs: withLine(value.repairs, place, line) });
            setOpen(null);
          }}
        />
      )}
    </section>
  );
}

interface ThingProps extends PieceProps {
  readonly of: string;
  readonly name: string;
  readonly onOpen: (open: Open) => void;
}

function Thing({ now, kept, value, mayWrite, since, of, name, onOpen }: ThingProps) {
  const lines = value.repairs
    .filter((line) => line.of === of)
    .toSorted(
      (a, b) =>
        MARK_KINDS.indexOf(a.kind) - MARK_KINDS.indexOf(b.kind) ||
        (a.upToMm ?? Number.POSITIVE_INFINITY) - (b.upToMm ?? Number.POSITIVE_INFINITY),
    );
  const without = MARK_KINDS.filter((kind) => lines.every((line) => line.kind !== kind));
  return (
    <section className="price-thing" aria-label={name}>
      <div className="row spread">
        <h3>{name}</h3>
        {mayWrite && (
          <Button
            look="quiet"
            onPress={() => onOpen({ of })}
            aria-label={t("firmPrices.repairs.addOf", { name })}
          >
            {t("firmPrices.repairs.addHere")}
          </Button>
        )}
      </div>
      <ul>
        {lines.map((line) => {
          const state = stateOf(line, kept.repairs);
          const title = damageText(line, lines);
          return (
            <li key={line.id} className="price-line">
              <span>
                {title} <Stand state={state} />
                <Since
                  of={now.repairs.find((each) => repairId(each) === line.id)?.since}
                  usual={since}
                  state={state}
                />
              </span>
              <span>
                <strong className="num">{moneyText(pounds(line.pence))}</strong>{" "}
                <span className="quiet">
                  {t("firmPrices.work", { work: line.part })}
                  {line.part === "replace" && `, ${wearText(line)}`}
                </span>
              </span>
              {mayWrite && (
                <Button
                  look="quiet"
                  onPress={() => onOpen({ line })}
                  aria-label={t("firmPrices.changeOf", { name: `${name}, ${title}` })}
                >
                  {t("firmPrices.change")}
                </Button>
              )}
            </li>
          );
        })}
      </ul>
      {without.length > 0 && (
        <p className="quiet">
          {t("firmPrices.repairs.without", {
            kinds: without.map((kind) => t("firmPrices.kind", { kind }).toLowerCase()).join(", "),
            of,
          })}
        </p>
      )}
    </section>
  );
}
