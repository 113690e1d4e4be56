import type { Diagnosis, ProposedCheck, StoreNow, SymptomOnVehicle } from "@setfair/engine/diagnosis";
import { useMutation } from "@tanstack/react-query";
import { useState } from "react";
import {
  aboutMinutes,
  answerText,
  causeText,
  faultCheckText,
  outcomeText,
  symptomText,
} from "../../parts/finder/fault-words.ts";
import { type Faults, type Finder, helpContent, useFinder } from "../../parts/finder/use-finder.ts";
import { Button, FigureTap, TextField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import type { HirePageData } from "../hire/use-hire.ts";
import { sendHelp } from "./send-help.ts";

const ANSWERS = ["fixed", "found", "notIt", "cannotTell"] as const;

/** What to ask the hirer to do next, why, and a note of what was told. */
export function FinderCard({
  page,
  on,
  faults,
  stores,
  onGoOn,
}: {
  readonly page: HirePageData;
  readonly on: SymptomOnVehicle;
  readonly faults: Faults;
  readonly stores: readonly StoreNow[];
  readonly onGoOn: (symptom: string) => void;
}) {
  const finder = useFinder(on, faults, stores, `setfair.help.${page.hire.id}.${on.symptom.id}`);
  const { diagnosis } = finder;
  const { next, outcome, goOnWith, tried, causes } = diagnosis;
  const known = outcome === "found" && causes.length === 1 ? (causes[0]?.cause ?? null) : null;
  return (
    <section className="card stack" aria-labelledby="finder">
      <h2 id="finder">{symptomText(on.symptom.id)}</h2>
      {outcome === "stop" ? (
        <div className="help-stop stack-tight" role="alert">
          <p className="check-text">{t("desk.help.stop")}</p>
          <ol className="tried">
            <li>{t("hirer.stop.1")}</li>
            <li>{t("hirer.stop.2")}</li>
            <li>{t("hirer.stop.3")}</li>
          </ol>
          <p>{t("desk.help.stopThen")}</p>
        </div>
      ) : next !== null ? (
        <AskNext check={next} finder={finder} />
      ) : (
        <div role="status">
          <p className="check-text">{known === null ? outcomeText(outcome) : causeText(known)}</p>
          {known !== null && <p>{outcomeText(outcome)}</p>}
        </div>
      )}
      {goOnWith !== null && (
        <Button look="main" onPress={() => onGoOn(goOnWith)}>
          {t("hirer.fault.goOn", { symptom: symptomText(goOnWith) })}
        </Button>
      )}
      {tried.length > 0 && (
        <>
          <h3>{t("desk.help.tried")}</h3>
          <ol className="tried">
            {tried.map(({ check, answer }) => (
              <li key={check}>
                {faultCheckText(check)} <strong>{answerText(answer)}.</strong>
              </li>
            ))}
          </ol>
          <Button onPress={finder.undo}>{t("desk.help.undo")}</Button>
        </>
      )}
      {outcome !== "stop" && <Likely diagnosis={diagnosis} />}
      <NoteOfIt page={page} diagnosis={diagnosis} />
    </section>
  );
}

function AskNext({ check, finder }: { readonly check: ProposedCheck; readonly finder: Finder }) {
  return (
    <div className="help-next stack-tight">
      <p className="quiet">{t("desk.help.next")}</p>
      <p className="check-text" aria-live="polite">
        {faultCheckText(check.check)}
      </p>
      <p className="quiet">
        {aboutMinutes(check.minutes.value)} · {t("desk.help.finds")}{" "}
        <FigureTap figure={check.finds} label={t("desk.help.findsName")} />
      </p>
      <div className="choices">
        {ANSWERS.map((answer) => (
          <Button key={answer} onPress={() => finder.answer(check.check, answer)}>
            {answerText(answer)}
          </Button>
        ))}
      </div>
    </div>
  );
}

function Likely({ diagnosis }: { readonly diagnosis: Diagnosis }) {
  const { causes, expectedMinutes, leftForTrained } = diagnosis;
  return (
    <>
      <h3>{t("desk.help.causes")}</h3>
      <table className="dense">
        <tbody>
          {causes.map(({ cause, chance }) => (
            <tr key={cause}>
              <td>{causeText(cause)}</td>
              <td className="num">
                <FigureTap figure={chance} label={causeText(cause)} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {expectedMinutes !== null && (
        <p className="quiet">
          {t("desk.help.expected")} <FigureTap figure={expectedMinutes} label={t("desk.help.expectedName")} />
        </p>
      )}
      {leftForTrained.length > 0 && (
        <>
          <h3>{t("desk.help.trained")}</h3>
          <ul className="tried">
            {leftForTrained.map((id) => (
              <li key={id}>{faultCheckText(id)}</li>
            ))}
          </ul>
        </>
      )}
    </>
  );
}

/** Keeps what was told; the hirer's own note then counts as answered. */
function NoteOfIt({ page, diagnosis }: { readonly page: HirePageData; readonly diagnosis: Diagnosis }) {
  const [note, setNote] = useState("");
  const send = useMutation({
    mutationFn: () =>
      sendHelp(page.hire.id, page.vehicle?.id ?? null, helpContent(diagnosis, "desk", note.trim())),
    onSuccess: () => setNote(""),
  });
  return (
    <div className="stack-tight help-note">
      <TextField label={t("desk.help.note")} value={note} onChange={setNote} />
      <Button look="main" onPress={() => send.mutate()} isPending={send.isPending}>
        {t("desk.help.keep")}
      </Button>
      {send.isSuccess && <p role="status">{t("desk.help.kept")}</p>}
      <FailureNote failure={send.error} />
    </div>
  );
}
