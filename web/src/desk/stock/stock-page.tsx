import { useQuery } from "@tanstack/react-query";
import { useState } from "react";
import { client, type Schemas } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { Button, Dialog, Empty, Loading, ScrollX } from "../../parts/index.ts";
import { dateText, t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { usePageTitle } from "../use-page-title.ts";
import { ItemDialog } from "./item-dialog.tsx";
import { ItemForm } from "./item-form.tsx";
import { stockKindText } from "./stock-words.ts";
import "./stock.css";

type Item = Schemas["StockItem"];

/** Things that travel with hires: what there is, what is free now, who has the rest and until when. */
export default function StockPage() {
  usePageTitle(t("stock.title"));
  const [isAdding, setAdding] = useState(false);
  const [open, setOpen] = useState<string | null>(null);
  const stock = useQuery({ queryKey: ["stock"], queryFn: () => take(client.GET("/api/stock")) });
  const items = stock.data?.items ?? [];
  const kinds = [...new Set(items.map(({ kind }) => kind))].sort((a, b) =>
    stockKindText(a).localeCompare(stockKindText(b), "en"),
  );
  return (
    <>
      <div className="page-head">
        <h1>{t("stock.title")}</h1>
        <p className="quiet">{t("stock.lead")}</p>
        <div className="page-acts">
          <Button look="main" onPress={() => setAdding(true)}>
            {t("stock.add")}
          </Button>
        </div>
      </div>
      {stock.isPending && <Loading />}
      <FailureNote failure={stock.error} onAgain={() => void stock.refetch()} />
      {stock.isSuccess && items.length === 0 && <Empty>{t("stock.none")}</Empty>}
      <div className="stack">
        {kinds.map((kind) => (
          <KindCard
            key={kind}
            kind={kind}
            items={items.filter((item) => item.kind === kind)}
            onOpen={setOpen}
          />
        ))}
      </div>
      <Dialog title={t("stock.add")} isOpen={isAdding} onClose={() => setAdding(false)} wide>
        <ItemForm item={null} onDone={() => setAdding(false)} />
      </Dialog>
      <ItemDialog id={open} onClose={() => setOpen(null)} />
    </>
  );
}

interface KindCardProps {
  readonly kind: string;
  readonly items: readonly Item[];
  readonly onOpen: (id: string) => void;
}

function KindCard({ kind, items, onOpen }: KindCardProps) {
  const inUse = items.filter(({ date }) => date !== "retired");
  const have = inUse.reduce((sum, { count }) => sum + count, 0);
  const free = inUse.reduce((sum, { freeNow }) => sum + freeNow, 0);
  const id = `kind-${kind}`;
  return (
    <section className="card stack-tight" aria-labelledby={id}>
      <div className="row spread">
        <h2 id={id}>{stockKindText(kind)}</h2>
        <span className="quiet num">{t("stock.freeNow", { free, have })}</span>
      </div>
      <ScrollX label={stockKindText(kind)}>
        <table className="dense stock-table">
          <thead>
            <tr>
              <th>{t("stock.name")}</th>
              <th>{t("stock.count")}</th>
              <th>{t("stock.goodUntil")}</th>
              <th>{t("stock.who")}</th>
            </tr>
          </thead>
          <tbody>
            {items.map((item) => (
              <ItemRow key={item.id} item={item} onOpen={onOpen} />
            ))}
          </tbody>
        </table>
      </ScrollX>
    </section>
  );
}

function ItemRow({ item, onOpen }: { readonly item: Item; readonly onOpen: (id: string) => void }) {
  return (
    <tr>
      <td>
        {item.byTerms ? (
          <span className="quiet">{t("stock.byTerms")}</span>
        ) : (
          <Button look="quiet" onPress={() => onOpen(item.id)}>
            {item.name}
          </Button>
        )}
        {item.size !== undefined && <span className="quiet"> {item.size}</span>}
      </td>
      <td className="num">{t("stock.freeOf", { free: item.freeNow, of: item.count })}</td>
      <td className="num">
        {item.expiresOn !== undefined && dateText(item.expiresOn, "full")}
        {item.date !== "good" && (
          <div className={item.date === "soon" ? "stock-soon" : "strip-say-trouble"}>
            {t("stock.date", { date: item.date })}
          </div>
        )}
      </td>
      <td>
        {item.holds.slice(0, 4).map((held) => (
          <div key={held.id} className="num">
            {t("stock.holder", {
              customer: held.customer,
              reference: held.reference,
              count: held.count,
              from: dateText(held.from, "day"),
              to: dateText(held.to, "day"),
            })}
            {held.packedAt !== null && <span className="quiet"> {t("stock.packedMark")}</span>}
          </div>
        ))}
        {item.holds.length > 4 && (
          <span className="quiet">{t("stock.more", { n: item.holds.length - 4 })}</span>
        )}
        {item.holds.length === 0 && <span className="quiet">{t("stock.nobody")}</span>}
      </td>
    </tr>
  );
}
