import type { Settlement, SettlementLine } from "@setfair/engine";
import { useQuery } from "@tanstack/react-query";
import { client } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { Button, FigureTap, FindingsList, Loading } from "../../../parts/index.ts";
import { dateText, has, moneyText, say, t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import { type PartProps, useHireAct } from "../use-hire.ts";

const aboutText = (about: string): string =>
  has(about) ? say(about) : has(`charge.${about}`) ? say(`charge.${about}`) : about;

function LineRow({ line }: { readonly line: SettlementLine }) {
  const name = t(`settlement.${line.code}`, { about: aboutText(line.about) });
  return (
    <tr>
      <td>
        {name}
        {line.quantity !== null && (
          <>
            {" "}
            <FigureTap figure={line.quantity} label={name} />
          </>
        )}
        {line.because !== null && <span className="quiet"> {t(`settlement.because.${line.because}`)}</span>}
        {line.working.length > 0 && (
          <div className="quiet">
            {line.working.map((figure) => (
              <span key={figure.formula + String(figure.value)}>
                <FigureTap figure={figure} label={name} />{" "}
              </span>
            ))}
          </div>
        )}
        <div className="quiet">
          {t("settlement.evidence", {
            records: line.evidence.records.length,
            photographs: line.evidence.photographs.length,
          })}
          {line.disputed && ` · ${t("settlement.disputed")}`}
        </div>
      </td>
      <td>{moneyText(line.amount)}</td>
    </tr>
  );
}

function Totals({ result }: { readonly result: Settlement }) {
  const rows = [
    ...(result.overExcess.pence === 0 ? [] : [["settlement.overExcess", result.overExcess] as const]),
    ["settlement.total", result.total] as const,
    ["settlement.depositHeld", result.depositHeld] as const,
    ["settlement.depositKept", result.depositKept] as const,
    ...(result.depositWithheld.pence === 0
      ? []
      : [["settlement.depositWithheld", result.depositWithheld] as const]),
    ["settlement.depositReturned", result.depositReturned] as const,
    ...(result.stillOwed.pence === 0 ? [] : [["settlement.stillOwed", result.stillOwed] as const]),
  ];
  return rows.map(([id, money]) => (
    <tr key={id} className={id === "settlement.total" ? "amounts-total" : undefined}>
      <td>{t(id)}</td>
      <td>{moneyText(money)}</td>
    </tr>
  ));
}

/** The settlement: lines in whole pence with their evidence, then what goes back of the deposit. */
export function SettlementCard({ page }: PartProps) {
  const { id } = page.hire;
  const settlement = useQuery({
    queryKey: ["settlement", id],
    queryFn: () => take(client.GET("/api/hires/{id}/settlement", { params: { path: { id } } })),
  });
  // the server sends the engine's own answer
  const result = settlement.data?.result as Settlement | null | undefined;
  return (
    <section className="card sheet" aria-labelledby="settlement-title">
      <h2 id="settlement-title">{t("settlement.title")}</h2>
      {settlement.isPending && <Loading />}
      <FailureNote failure={settlement.error} onAgain={() => void settlement.refetch()} />
      {result !== null && result !== undefined && (
        <table className="dense amounts">
          <tbody>
            {result.lines.length === 0 && (
              <tr>
                <td>{t("settlement.nothing")}</td>
                <td />
              </tr>
            )}
            {result.lines.map((line) => (
              <LineRow key={line.id} line={line} />
            ))}
            <Totals result={result} />
          </tbody>
        </table>
      )}
      {settlement.data !== undefined && settlement.data.findings.length > 0 && (
        <FindingsList findings={settlement.data.findings} />
      )}
      {settlement.data !== undefined && (
        <p className="quiet">
          {t("settlement.releaseBy", { on: dateText(settlement.data.releaseBy, "full") })}
        </p>
      )}
      <Acts page={page} releasedAt={settlement.data?.releasedAt ?? null} />
    </section>
  );
}

function Acts({ page, releasedAt }: PartProps & { readonly releasedAt: string | null }) {
  const { id, stage } = page.hire;
  const path = { params: { path: { id } } };
  const settle = useHireAct(() => take(client.POST("/api/hires/{id}/settlement", path)));
  const release = useHireAct(() => take(client.POST("/api/hires/{id}/deposit-release", path)));
  const close = useHireAct(() => take(client.POST("/api/hires/{id}/close", path)));
  return (
    <>
      <FailureNote failure={settle.error ?? release.error ?? close.error} />
      <div className="row">
        {stage === "returned" && (
          <Button look="main" onPress={() => settle.mutate()} isPending={settle.isPending}>
            {t("settlement.settle")}
          </Button>
        )}
        {stage === "settled" && releasedAt === null && (
          <Button look="main" onPress={() => release.mutate()} isPending={release.isPending}>
            {t("settlement.release")}
          </Button>
        )}
        {stage === "settled" && (
          <Button onPress={() => close.mutate()} isPending={close.isPending}>
            {t("settlement.close")}
          </Button>
        )}
      </div>
    </>
  );
}
