import { useMutation, useQuery } from "@tanstack/react-query";
import { useState } from "react";
import { client, type Schemas } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { Button, FindingsList, Loading, NumberField, SelectField } from "../../parts/index.ts";
import { dateText, t } from "../../parts/words.ts";
import { ShortOf } from "../enquiry/short-of.tsx";
import { FailureNote } from "../failure-note.tsx";
import { sendOrRead } from "../meanwhile/use-guarded-draft.ts";
import { queries } from "../query-client.ts";
import { stockKindText } from "./stock-words.ts";

type HireStock = Schemas["HireStock"];
type Hold = HireStock["holds"][number];
type Ask = HireStock["asks"][number];

function changed(hireId: string, answer: HireStock): void {
  queries.setQueryData(["hireStock", hireId], answer);
  for (const key of [["stock"], ["hire", hireId], ["abroad", hireId], ["today"]])
    void queries.invalidateQueries({ queryKey: key });
}

export interface HireStockCardProps {
  readonly hireId: string;
  readonly stage: Schemas["HirePage"]["hire"]["stage"];
}

/** What travels with a hire: held from the booking on, packed with one tap, back on the shelf with another. */
export function HireStockCard({ hireId, stage }: HireStockCardProps) {
  const params = { path: { id: hireId } };
  const found = useQuery({
    queryKey: ["hireStock", hireId],
    queryFn: () => take(client.GET("/api/hires/{id}/stock", { params })),
  });
  const isOpen = stage === "enquiry" || stage === "quote" || stage === "booked";
  if (found.isPending) return <Loading />;
  if (found.isError) return <FailureNote failure={found.error} onAgain={() => void found.refetch()} />;
  const { asks, holds, findings, short } = found.data;
  if (!isOpen && holds.length === 0) return null;
  return (
    <section className="card stack-tight" aria-labelledby="stock-card-title">
      <h2 id="stock-card-title">{t("stock.travels")}</h2>
      {holds.length > 0 && (
        <ul>
          {holds.map((hold) => (
            <HoldLine key={hold.id} hireId={hireId} hold={hold} stage={stage} />
          ))}
        </ul>
      )}
      {holds.length === 0 && asks.length === 0 && <p className="quiet">{t("stock.nothingTravels")}</p>}
      {stage !== "booked" && asks.length > 0 && (
        <p className="quiet">{t("stock.heldFromBooking", { list: asks.map(askText).join(", ") })}</p>
      )}
      {findings.length > 0 && <FindingsList findings={findings} />}
      <ShortOf short={short} />
      {isOpen && <AddAsk hireId={hireId} stock={found.data} />}
    </section>
  );
}

const askText = ({ kind, size, count }: Ask): string =>
  t("stock.ask", { kind: stockKindText(kind), size: size ?? "any", count });

function HoldLine({
  hireId,
  hold,
  stage,
}: {
  readonly hireId: string;
  readonly hold: Hold;
  readonly stage: HireStockCardProps["stage"];
}) {
  const act = useMutation({
    mutationFn: (what: "pack" | "unpack" | "back") =>
      take(
        client.POST("/api/hires/{id}/stock/{holdId}", {
          params: { path: { id: hireId, holdId: hold.id } },
          body: { act: what },
        }),
      ),
    onSuccess: (answer) => changed(hireId, answer),
  });
  const isPacked = hold.packedAt !== null;
  const isOver = ["returned", "settled", "closed"].includes(stage);
  const wasOut = ["onHire", "handedOver", "returned"].includes(stage);
  return (
    <li className="answer stack-tight">
      <div className="row spread">
        <span>
          <strong>{hold.name === hold.kind ? stockKindText(hold.kind) : hold.name}</strong>{" "}
          {hold.name !== hold.kind && <span className="quiet">{stockKindText(hold.kind)}</span>}
          {hold.size !== null && <span className="quiet"> {hold.size}</span>}
          {hold.count > 1 && <span className="num"> × {hold.count}</span>}
          {hold.expiresOn !== null && (
            <span className="quiet"> {t("stock.goodTo", { day: dateText(hold.expiresOn, "full") })}</span>
          )}{" "}
          {hold.isBack
            ? t("stock.isBack")
            : isPacked
              ? t("stock.isPacked")
              : t(isOver ? "stock.stayedHere" : "stock.notPacked")}
        </span>
        {!hold.isBack &&
          (isPacked ? (
            wasOut ? (
              <Button onPress={() => act.mutate("back")} isPending={act.isPending}>
                {t("stock.backOnShelf", { name: hold.name })}
              </Button>
            ) : (
              <Button look="quiet" onPress={() => act.mutate("unpack")} isPending={act.isPending}>
                {t("stock.unpack", { name: hold.name })}
              </Button>
            )
          ) : isOver ? null : (
            <Button look="main" onPress={() => act.mutate("pack")} isPending={act.isPending}>
              {t("stock.pack", { name: hold.name })}
            </Button>
          ))}
      </div>
      {hold.puts.length > 0 && !isPacked && <p className="quiet">{t("stock.countsWhenPacked")}</p>}
      <FailureNote failure={act.error} />
    </li>
  );
}

function AddAsk({ hireId, stock }: { readonly hireId: string; readonly stock: HireStock }) {
  const [kind, setKind] = useState<string | null>(null);
  const [size, setSize] = useState("any");
  const [count, setCount] = useState(1);
  const save = useMutation({
    mutationFn: (asks: readonly Ask[]) =>
      sendOrRead(
        () =>
          take(
            client.PUT("/api/hires/{id}/stock", {
              params: { path: { id: hireId }, query: { basedOn: String(stock.version) } },
              body: { asks: [...asks] },
            }),
          ),
        () => queries.invalidateQueries({ queryKey: ["hireStock", hireId] }),
      ),
    onSuccess: (answer) => {
      changed(hireId, answer);
      setKind(null);
    },
  });
  const sizes = stock.kinds.find((each) => each.kind === kind)?.sizes ?? [];
  const add = () => {
    if (kind === null) return;
    const wanted: Ask = { kind, count, ...(size === "any" ? {} : { size }) };
    const rest = stock.asks.filter((each) => each.kind !== kind || each.size !== wanted.size);
    save.mutate([...rest, wanted]);
  };
  return (
    <details>
      <summary className="fold">{t("stock.takeMore")}</summary>
      <div className="sheet-fields">
        <SelectField
          label={t("stock.kind")}
          value={kind}
          options={stock.kinds.map((each) => ({ value: each.kind, label: stockKindText(each.kind) }))}
          onChange={(next) => {
            setKind(next);
            setSize("any");
          }}
        />
        {sizes.length > 0 && (
          <SelectField
            label={t("stock.size")}
            value={size}
            options={["any", ...sizes].map((each) => ({
              value: each,
              label: each === "any" ? t("stock.anySize") : each,
            }))}
            onChange={setSize}
          />
        )}
        <NumberField
          label={t("stock.count")}
          value={count}
          min={1}
          max={50}
          stepper
          onChange={(next) => setCount(next ?? 1)}
        />
      </div>
      <FailureNote failure={save.error} />
      <div className="row">
        <Button onPress={add} isDisabled={kind === null} isPending={save.isPending}>
          {t("stock.takeIt")}
        </Button>
        {stock.asks.map((ask) => (
          <Button
            key={askText(ask)}
            look="quiet"
            onPress={() => save.mutate(stock.asks.filter((each) => each !== ask))}
          >
            {t("stock.leaveOut", { what: askText(ask) })}
          </Button>
        ))}
      </div>
    </details>
  );
}
