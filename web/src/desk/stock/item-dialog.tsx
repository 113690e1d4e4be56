import { useQuery } from "@tanstack/react-query";
import { client } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { Dialog, Loading } from "../../parts/index.ts";
import { dateText, t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { ItemForm } from "./item-form.tsx";

/** One thing: change it or take it out of use, and everything that happened to it. */
export function ItemDialog({ id, onClose }: { readonly id: string | null; readonly onClose: () => void }) {
  const found = useQuery({
    queryKey: ["stock", id],
    queryFn: () => take(client.GET("/api/stock/{id}", { params: { path: { id: id ?? "" } } })),
    enabled: id !== null,
  });
  const { data } = found;
  return (
    <Dialog title={data?.item.name ?? t("stock.title")} isOpen={id !== null} onClose={onClose} wide>
      {found.isPending && id !== null && <Loading />}
      <FailureNote failure={found.error} onAgain={() => void found.refetch()} />
      {data !== undefined && (
        <div className="stack">
          <ItemForm key={data.item.id} item={data.item} onDone={onClose} />
          <section aria-labelledby="item-history">
            <h3 id="item-history">{t("stock.history")}</h3>
            <ul>
              {data.history.map(({ at, by, act, reference, note }) => (
                <li key={at + act}>
                  <span className="num">{dateText(at, "full")}</span> {t("stock.act", { act })}
                  {reference !== null && ` · ${reference}`} · {by}
                  {note !== "" && <span className="quiet"> · {note}</span>}
                </li>
              ))}
            </ul>
          </section>
          {data.past.length > 0 && (
            <section aria-labelledby="item-past">
              <h3 id="item-past">{t("stock.past", { n: data.past.length })}</h3>
              <ul>
                {data.past.slice(0, 12).map((held) => (
                  <li key={held.id} className="num">
                    {t("stock.holder", {
                      customer: held.customer,
                      reference: held.reference,
                      count: held.count,
                      from: dateText(held.from, "full"),
                      to: dateText(held.to, "full"),
                    })}
                  </li>
                ))}
              </ul>
            </section>
          )}
        </div>
      )}
    </Dialog>
  );
}
