import { useQuery } from "@tanstack/react-query";
import { useState } from "react";
import { client } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { Button, Loading } from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import { VehicleAnswers } from "../../enquiry/vehicle-answers.tsx";
import { FailureNote } from "../../failure-note.tsx";
import { keepPart } from "../keep-part.ts";
import { type PartProps, useHireAct } from "../use-hire.ts";
import "../../enquiry/enquiry.css";

const CHANGEABLE = ["enquiry", "quote", "booked"];

/** Which vehicle, and which others could do it. */
export function VehicleChoice({ page }: PartProps) {
  const { hire, party } = page;
  const [isOpen, setOpen] = useState(hire.vehicle === null);
  const question = { party, from: hire.from, to: hire.to };
  const answers = useQuery({
    queryKey: ["availability", question],
    queryFn: () => take(client.POST("/api/availability", { body: question })),
    enabled: isOpen,
  });
  const choose = useHireAct((vehicleId: string) =>
    keepPart(hire.id, () =>
      take(
        client.PUT("/api/hires/{id}/vehicle", {
          params: { path: { id: hire.id }, query: { basedOn: hire.vehicle?.id ?? "none" } },
          body: { vehicleId },
        }),
      ),
    ),
  );
  if (!CHANGEABLE.includes(hire.stage)) return null;
  return (
    <section className="card" aria-labelledby="choice-title">
      <div className="row spread">
        <h2 id="choice-title">
          {hire.vehicle === null ? t("desk.noVehicle") : `${hire.vehicle.name} ${hire.vehicle.registration}`}
        </h2>
        {!isOpen && <Button onPress={() => setOpen(true)}>{t("people.otherVehicles")}</Button>}
      </div>
      {isOpen && answers.isPending && <Loading what={t("desk.enquiry.looking")} />}
      <FailureNote failure={choose.error ?? answers.error} />
      {isOpen && answers.data !== undefined && (
        <VehicleAnswers
          answers={answers.data.vehicles}
          chosen={hire.vehicle?.id ?? null}
          onChoose={(vehicleId) => {
            if (vehicleId !== null) choose.mutate(vehicleId);
          }}
        />
      )}
    </section>
  );
}
