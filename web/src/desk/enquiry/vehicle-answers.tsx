import type { Schemas } from "../../api/client.ts";
import { Button, classes, FindingsList } from "../../parts/index.ts";
import { dateText, moneyText, t } from "../../parts/words.ts";

type Answer = Schemas["Availability"]["vehicles"][number];
type Change = Answer["nearestChanges"][number];

export interface VehicleAnswersProps {
  readonly answers: readonly Answer[];
  readonly chosen: string | null;
  readonly onChoose: (vehicleId: string | null) => void;
  /** takes other dates; left out where the dates stand */
  readonly onShift?: (from: string, to: string, vehicleId: string) => void;
}

function changeText(change: Change): string {
  if (change.kind === "shift" && change.from !== undefined && change.to !== undefined) {
    return t("desk.change.shift", { from: change.from, to: change.to });
  }
  return t("desk.change.other", { kind: change.kind, people: change.people ?? 0 });
}

function Possible({
  answer,
  isChosen,
  onChoose,
}: {
  readonly answer: Answer;
  readonly isChosen: boolean;
  readonly onChoose: () => void;
}) {
  return (
    <li className={classes("answer", isChosen && "answer-chosen")}>
      <div className="answer-head">
        <strong>
          {answer.name} <span className="quiet nowrap">{answer.registration}</span>
        </strong>
        {answer.price !== null && <strong className="num">{moneyText(answer.price)}</strong>}
        <Button look={isChosen ? "main" : "plain"} onPress={onChoose} aria-pressed={isChosen}>
          {t(isChosen ? "desk.enquiry.chosen" : "desk.enquiry.choose")}
        </Button>
      </div>
      {answer.findings.length > 0 && <FindingsList findings={answer.findings} />}
    </li>
  );
}

function Impossible({
  answer,
  onShift,
}: {
  readonly answer: Answer;
  readonly onShift: VehicleAnswersProps["onShift"] | undefined;
}) {
  return (
    <li className="answer">
      <strong>
        {answer.name} <span className="quiet nowrap">{answer.registration}</span>
      </strong>
      <FindingsList findings={answer.findings} />
      {answer.nearestChanges.map((change) => {
        const { from, to } = change;
        return (
          <div key={changeText(change)} className="row spread">
            <span>{changeText(change)}</span>
            {change.kind === "shift" && from !== undefined && to !== undefined && onShift !== undefined && (
              <Button onPress={() => onShift(from, to, answer.id)}>
                {t("desk.change.take", { day: dateText(from, "day") })}
              </Button>
            )}
          </div>
        );
      })}
    </li>
  );
}

/** Vehicles that can take it, with their price; then those that cannot, why, and the nearest change. */
export function VehicleAnswers({ answers, chosen, onChoose, onShift }: VehicleAnswersProps) {
  const possible = answers.filter((answer) => answer.possible);
  const impossible = answers.filter((answer) => !answer.possible);
  return (
    <>
      <p>{t("desk.enquiry.found", { n: possible.length, of: answers.length })}</p>
      <ul>
        {possible.map((answer) => (
          <Possible
            key={answer.id}
            answer={answer}
            isChosen={answer.id === chosen}
            onChoose={() => onChoose(answer.id === chosen ? null : answer.id)}
          />
        ))}
      </ul>
      {impossible.length > 0 && (
        <>
          <h3>{t("desk.enquiry.cannot", { n: impossible.length })}</h3>
          <ul>
            {impossible.map((answer) => (
              <Impossible key={answer.id} answer={answer} onShift={onShift} />
            ))}
          </ul>
        </>
      )}
    </>
  );
}
