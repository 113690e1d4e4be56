import { useMutation, useQuery } from "@tanstack/react-query";
import { useState } from "react";
import { client, type Schemas } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { Button, classes, Dialog, FindingsList, Loading } from "../../parts/index.ts";
import { dateText, moneyText, t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { hireChanged } from "../hire/use-hire.ts";
import type { DiaryHire } from "./diary-model.ts";
import { diaryChanged } from "./use-diary.ts";

type Answer = Schemas["HireVehicles"];
type Vehicle = Answer["vehicles"][number];

export interface MoveDialogProps {
  readonly hire: DiaryHire;
  /** where it was dragged to; null where it is still to be chosen */
  readonly to: string | null;
  readonly onClose: () => void;
}

/** Which vehicles can take this hire and why not; what changes with the one that is chosen; then the move. */
export function MoveDialog({ hire, to, onClose }: MoveDialogProps) {
  const [chosen, choose] = useState(to);
  const asked = useQuery({
    queryKey: ["hireVehicles", hire.id],
    queryFn: () => take(client.GET("/api/hires/{id}/vehicles", { params: { path: { id: hire.id } } })),
  });
  const move = useMutation({
    mutationFn: (vehicleId: string) =>
      take(
        client.POST("/api/hires/{id}/move", {
          params: { path: { id: hire.id } },
          body: { vehicleId, was: hire.vehicleId },
        }),
      ),
    onSuccess: (page) => {
      hireChanged(page);
      diaryChanged();
      onClose();
    },
    onError: diaryChanged,
  });
  const title = t("diary.moveTitle", {
    customer: hire.customer,
    from: dateText(hire.from, "dayTime"),
    to: dateText(hire.to, "dayTime"),
  });
  return (
    <Dialog title={title} isOpen onClose={onClose} wide>
      <div className="stack">
        {asked.isPending && <Loading what={t("desk.enquiry.looking")} />}
        <FailureNote failure={asked.error} onAgain={() => void asked.refetch()} />
        {asked.data !== undefined && <Choices answer={asked.data} chosen={chosen} choose={choose} />}
        <FailureNote failure={move.error} />
        {asked.data !== undefined && (
          <Confirm
            answer={asked.data}
            chosen={chosen}
            isPending={move.isPending}
            onMove={(id) => move.mutate(id)}
          />
        )}
      </div>
    </Dialog>
  );
}

interface ChoicesProps {
  readonly answer: Answer;
  readonly chosen: string | null;
  readonly choose: (id: string) => void;
}

function Choices({ answer, chosen, choose }: ChoicesProps) {
  const others = answer.vehicles.filter(({ id }) => id !== answer.current);
  const can = others.filter(({ possible }) => possible);
  const cannot = others.filter(({ possible }) => !possible);
  return (
    <>
      <p>{t("desk.enquiry.found", { n: can.length, of: others.length })}</p>
      <ul className="diary-choices">
        {can.map((vehicle) => (
          <li key={vehicle.id} className={classes("answer", vehicle.id === chosen && "answer-chosen")}>
            <div className="answer-head">
              <VehicleName vehicle={vehicle} />
              <Button
                look={vehicle.id === chosen ? "main" : "plain"}
                aria-pressed={vehicle.id === chosen}
                onPress={() => choose(vehicle.id)}
              >
                {t(vehicle.id === chosen ? "desk.enquiry.chosen" : "desk.enquiry.choose")}
              </Button>
            </div>
          </li>
        ))}
      </ul>
      {cannot.length > 0 && (
        <>
          <h3>{t("desk.enquiry.cannot", { n: cannot.length })}</h3>
          <ul className="diary-choices">
            {cannot.map((vehicle) => (
              <li key={vehicle.id} className="answer">
                <VehicleName vehicle={vehicle} />
                <FindingsList findings={vehicle.findings} />
              </li>
            ))}
          </ul>
        </>
      )}
    </>
  );
}

function VehicleName({ vehicle }: { readonly vehicle: Vehicle }) {
  return (
    <strong>
      {vehicle.name} <span className="quiet nowrap">{vehicle.registration}</span>
    </strong>
  );
}

interface ConfirmProps {
  readonly answer: Answer;
  readonly chosen: string | null;
  readonly isPending: boolean;
  readonly onMove: (vehicleId: string) => void;
}

/** What follows from the move, said before it is made. */
function Confirm({ answer, chosen, isPending, onMove }: ConfirmProps) {
  const target = answer.vehicles.find(({ id }) => id === chosen);
  if (target === undefined || target.id === answer.current) return null;
  if (!target.possible) return <p role="status">{t("diary.cannotTake", { name: target.name })}</p>;
  const isOtherClass = answer.currentClass !== null && answer.classes[target.id] !== answer.currentClass;
  return (
    <section className="diary-effects stack-tight" aria-labelledby="effects-title">
      <h3 id="effects-title">
        {t("diary.effects", { name: target.name, registration: target.registration })}
      </h3>
      <ul className="diary-effect-list">
        <li>{t("diary.effectAgain")}</li>
        {answer.quoted !== null && (
          <li>
            {isOtherClass && target.price !== null
              ? t("diary.effectOtherClass", {
                  quoted: moneyText(answer.quoted),
                  price: moneyText(target.price),
                })
              : t("diary.effectQuoteStays", { quoted: moneyText(answer.quoted) })}
          </li>
        )}
        {answer.pinned && <li>{t("diary.effectPinned")}</li>}
      </ul>
      {target.findings.length > 0 && <FindingsList findings={target.findings} />}
      <div className="row row-end">
        <Button look="main" isPending={isPending} onPress={() => onMove(target.id)}>
          {t("diary.moveTo", { name: target.name, registration: target.registration })}
        </Button>
      </div>
    </section>
  );
}
