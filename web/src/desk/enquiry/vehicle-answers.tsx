import type { Schemas } from "../../api/client.ts";
import { Button, classes, FindingsList } from "../../parts/index.ts";
import { dateText, moneyText, t } from "../../parts/words.ts";
import { stockKindText } from "../stock/stock-words.ts";

type Answer = Schemas["Availability"]["vehicles"][number];
type Change = Answer["nearestChanges"][number];

export interface VehicleAnswersProps {
  readonly answers: readonly Answer[];
  readonly chosen: string | null;
  readonly onChoose: (vehicleId: string | null) => void;
  /** takes other dates; left out where the dates stand */
  readonly onShift?: (from: string, to: string, vehicleId: string) => void;
  /** takes fewer of an extra; left out where the extras stand */
  readonly onFewer?: (extra: string, count: number) => void;
}

function changeText(change: Change): string {
  if (change.kind === "shift" && change.from !== undefined && change.to !== undefined) {
    return t("desk.change.shift", { from: change.from, to: change.to });
  }
  if (change.kind === "otherLength" && change.to !== undefined)
    return t("rates.change.otherLength", { n: change.count ?? 0, to: dateText(change.to, "dayTime") });
  if (change.kind === "fewerExtras")
    return t("rates.change.fewerExtras", { n: change.count ?? 0, what: stockKindText(change.extra ?? "") });
  if (change.kind === "otherVehicle")
    return t("rates.change.otherVehicle", { name: change.vehicleName ?? "" });
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

function ChangeAct({
  change,
  vehicleId,
  onShift,
  onFewer,
  onChoose,
}: Omit<VehicleAnswersProps, "answers" | "chosen"> & {
  readonly change: Change;
  readonly vehicleId: string;
}) {
  const { from, to, extra } = change;
  if (change.kind === "fewerExtras" && extra !== undefined && onFewer !== undefined)
    return (
      <Button onPress={() => onFewer(extra, change.count ?? 0)}>
        {t("rates.change.takeFewer", { n: change.count ?? 0 })}
      </Button>
    );
  const other = change.vehicleId;
  if (other !== undefined)
    return (
      <Button onPress={() => onChoose(other)}>
        {t("rates.change.takeOther", { name: change.vehicleName ?? "" })}
      </Button>
    );
  if (from === undefined || to === undefined || onShift === undefined) return null;
  return (
    <Button onPress={() => onShift(from, to, vehicleId)}>
      {change.kind === "otherLength"
        ? t("rates.change.takeLength", { n: change.count ?? 0 })
        : t("desk.change.take", { day: dateText(from, "day") })}
    </Button>
  );
}

type ImpossibleProps = Omit<VehicleAnswersProps, "answers" | "chosen"> & {
  readonly answer: Answer;
  /** vehicles that stand above as able to do it */
  readonly offered: ReadonlySet<string>;
};

function Impossible({ answer, offered, ...acts }: ImpossibleProps) {
  // what is short on the shelf stands once, above them all
  const own = answer.findings.filter(({ code }) => code !== "stock.short");
  const changes = answer.nearestChanges.filter(
    ({ kind, vehicleId = "" }) => kind !== "otherVehicle" || !offered.has(vehicleId),
  );
  return (
    <li className="answer">
      <strong>
        {answer.name} <span className="quiet nowrap">{answer.registration}</span>
      </strong>
      {own.length > 0 && <FindingsList findings={own} />}
      {changes.map((change) => (
        <div key={changeText(change)} className="row spread answer-change">
          <span>{changeText(change)}</span>
          <ChangeAct change={change} vehicleId={answer.id} {...acts} />
        </div>
      ))}
    </li>
  );
}

/** Vehicles that can take it, with their price; then those that cannot, why, and the nearest change. */
export function VehicleAnswers({ answers, chosen, onChoose, ...acts }: VehicleAnswersProps) {
  const possible = answers.filter((answer) => answer.possible);
  const impossible = answers.filter((answer) => !answer.possible);
  const offered = new Set(possible.map(({ id }) => id));
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
              <Impossible key={answer.id} answer={answer} offered={offered} onChoose={onChoose} {...acts} />
            ))}
          </ul>
        </>
      )}
    </>
  );
}
