import type { Settlement, SettlementLine } from "@setfair/engine";
import { client } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { Button, FigureTap, FindingsList, Loading } from "../../../parts/index.ts";
import { dateText, has, moneyText, say, t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import { type PartProps, useHireAct } from "../use-hire.ts";
import { LineActs } from "./line-acts.tsx";
import { LineTalk, talkOf } from "./line-talk.tsx";
import { Photos } from "./photos.tsx";
import { resultOf, type SettlementState, useSettlement } from "./use-settlement.ts";

const aboutText = (about: string): string =>
  [`part.${about}`, `check.${about}`, about, `charge.${about}`].filter(has).map((id) => say(id))[0] ?? about;
const lineName = (line: SettlementLine): string =>
  t(`settlement.${line.code}`, { about: aboutText(line.about) });

interface LineRowProps {
  readonly hireId: string;
  readonly line: SettlementLine;
  readonly state: SettlementState;
}

function LineRow({ hireId, line, state }: LineRowProps) {
  const name = lineName(line);
  return (
    <tr>
      <td className="line-cell">
        <strong>{name}</strong>
        {line.quantity !== null && (
          <>
            {" "}
            <FigureTap figure={line.quantity} label={name} />
          </>
        )}
        {line.because !== null && <span className="quiet"> {t(`settlement.because.${line.because}`)}</span>}
        {line.disputed && <strong className="disputed"> {t("settlement.disputed")}</strong>}
        <Working line={line} name={name} />
        {line.evidence.photographs.length > 0 && line.amount.pence > 0 && (
          <Photos hashes={line.evidence.photographs} label={name} small />
        )}
        <LineTalk talk={talkOf(line, state.entries)} />
        <LineActs hireId={hireId} line={line} state={state} name={name} />
      </td>
      <td>{moneyText(line.because === "awaitsCost" ? line.awaiting : line.amount)}</td>
    </tr>
  );
}

/** What a step of the sum is: price list, parts or work of a paper, what is left of the part, a price. */
function stepName({ unit, formula, inputs }: SettlementLine["working"][number]): string {
  const { from, of, kind, loss } = inputs;
  if (formula === "worth.remainingShare") return t("settling.step.left");
  if (loss !== undefined) return t("late.step.loss", { loss: String(loss) });
  if (of === "atMost") return t("late.step.most");
  if (inputs.atMost === true) return t("late.step.rate");
  if (from !== undefined) return t("settling.step.paper", { from: String(from), of: String(of ?? "whole") });
  if (kind !== undefined || of === "once") return t("settling.step.list");
  return unit === "pence" ? t("settling.step.new") : t("settling.step.price");
}

/** How the amount came about, and how many records and photographs it rests on. */
function Working({ line, name }: { readonly line: SettlementLine; readonly name: string }) {
  return (
    <div className="quiet">
      {line.working.map((figure, k) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the steps of a sum are told apart by their place
        <span key={k}>
          {stepName(figure)} <FigureTap figure={figure} label={`${name}, ${stepName(figure)}`} />
          {" · "}
        </span>
      ))}
      {t("settlement.evidence", {
        records: line.evidence.records.length,
        photographs: line.evidence.photographs.length,
      })}
      {line.incident !== null && ` · ${t("settling.incidentIs", { incident: line.incident })}`}
    </div>
  );
}

function Totals({ result }: { readonly result: Settlement }) {
  const rows = [
    ...(result.overExcess.pence === 0 ? [] : [["settlement.overExcess", result.overExcess] as const]),
    ["settlement.total", result.total] as const,
    ...(result.awaiting.pence === 0 ? [] : [["settlement.awaiting", result.awaiting] as const]),
    ["settlement.depositHeld", result.depositHeld] as const,
    ["settlement.depositKept", result.depositKept] as const,
    ...(result.depositWithheld.pence === 0 ? [] : [["settling.withheld", result.depositWithheld] as const]),
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

/** The settlement: lines in whole pence with their evidence and all that was said of them, then the sums. */
export function SettlementCard({ page }: PartProps) {
  const { id } = page.hire;
  const settlement = useSettlement(id);
  const state = settlement.data;
  return (
    <section className="card sheet" aria-labelledby="settlement-title">
      <h2 id="settlement-title">{t("settlement.title")}</h2>
      {state?.frozenAt != null && (
        <p className="quiet">
          {t("settling.shown", { at: dateText(state.frozenAt, "fullTime"), by: state.frozenBy ?? "–" })}
        </p>
      )}
      {settlement.isPending && <Loading />}
      <FailureNote failure={settlement.error} onAgain={() => void settlement.refetch()} />
      {state !== undefined && (
        <>
          <Lines hireId={id} state={state} />
          {state.findings.length > 0 && <FindingsList findings={state.findings} />}
        </>
      )}
      <Settle page={page} />
    </section>
  );
}

function Lines({ hireId, state }: Omit<LineRowProps, "line">) {
  const result = resultOf(state);
  return (
    <table className="dense amounts">
      <thead className="visually-hidden">
        <tr>
          <th>{t("settling.what")}</th>
          <th>{t("money.amount")}</th>
        </tr>
      </thead>
      <tbody>
        {result.lines.length === 0 && (
          <tr>
            <td>{t("settlement.nothing")}</td>
            <td />
          </tr>
        )}
        {result.lines.map((line) => (
          <LineRow key={line.id} hireId={hireId} line={line} state={state} />
        ))}
        <Totals result={result} />
      </tbody>
    </table>
  );
}

function Settle({ page }: PartProps) {
  const { id, stage } = page.hire;
  const settle = useHireAct(() =>
    take(client.POST("/api/hires/{id}/settlement", { params: { path: { id } } })),
  );
  if (stage !== "returned") return null;
  return (
    <>
      <FailureNote failure={settle.error} />
      <p className="quiet">{t("settling.settleNote")}</p>
      <div>
        <Button look="main" onPress={() => settle.mutate()} isPending={settle.isPending}>
          {t("settlement.settle")}
        </Button>
      </div>
    </>
  );
}
