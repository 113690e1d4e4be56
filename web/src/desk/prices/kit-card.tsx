import { useState } from "react";
import { Button, PlainPill } from "../../parts/index.ts";
import { dateText, moneyText, t } from "../../parts/words.ts";
import { KitDialog } from "./kit-dialog.tsx";
import type { PieceProps } from "./piece-props.ts";
import { type KitLine, type LineState, stateOf, withLine } from "./price-draft.ts";
import { pounds, wearText } from "./price-words.ts";

interface KitCardProps extends PieceProps {
  /** a thing without a value that is to get one */
  readonly asked: string | null;
  readonly onAsked: () => void;
}

/** What things are worth new, and how they lose it. */
export function KitCard({ now, kept, value, change, mayWrite, since, asked, onAsked }: KitCardProps) {
  const [open, setOpen] = useState<KitLine | "new" | null>(null);
  const lines = value.kit.toSorted((a, b) => a.name.localeCompare(b.name, "en"));
  const shown = asked ?? (open === "new" ? "" : (open?.id ?? null));
  const close = () => {
    setOpen(null);
    onAsked();
  };
  return (
    <section className="card stack-tight" aria-labelledby="kit-title">
      <div className="row spread">
        <h2 id="kit-title">{t("firmPrices.kit.title")}</h2>
        {mayWrite && <Button onPress={() => setOpen("new")}>{t("firmPrices.kit.add")}</Button>}
      </div>
      <p className="quiet">{t("firmPrices.kit.lead")}</p>
      {lines.length === 0 && <p>{t("firmPrices.kit.none")}</p>}
      <ul>
        {lines.map((line) => (
          <li key={line.id} className="price-line">
            <span>
              <strong>{line.name}</strong> <Stand state={stateOf(line, kept.kit)} />
              <Since
                of={now.kit.find(({ id }) => id === line.id)?.since}
                usual={since}
                state={stateOf(line, kept.kit)}
              />
            </span>
            <span>
              <strong className="num">{moneyText(pounds(line.newPence))}</strong>{" "}
              <span className="quiet">{wearText(line)}</span>
            </span>
            {mayWrite && (
              <Button
                look="quiet"
                onPress={() => setOpen(line)}
                aria-label={t("firmPrices.changeOf", { name: line.name })}
              >
                {t("firmPrices.change")}
              </Button>
            )}
          </li>
        ))}
      </ul>
      {shown !== null && (
        <KitDialog
          key={shown}
          now={now}
          kit={value.kit}
          line={open === "new" ? null : open}
          thing={shown}
          onClose={close}
          onDone={(place, line) => {
            change({ kit: withLine(value.kit, place, line) });
            close();
          }}
        />
      )}
    </section>
  );
}

/** A line that is not kept yet says so. */
export function Stand({ state }: { readonly state: LineState }) {
  return state === "same" ? null : <PlainPill>{t("firmPrices.state", { state })}</PlainPill>;
}

interface SinceProps {
  readonly of: { readonly from: string; readonly by: string | null } | undefined;
  /** the day that is said once for all */
  readonly usual: string | null;
  readonly state: LineState;
}

/** Since when a price has been as it is, and who entered it. */
export function Since({ of, usual, state }: SinceProps) {
  if (of === undefined || state !== "same" || of.from === usual) return null;
  return (
    <span className="quiet price-since">
      {t("firmPrices.since", { from: dateText(of.from, "full"), by: of.by ?? "none" })}
    </span>
  );
}
