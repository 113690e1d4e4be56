import { useMutation, useQueryClient } from "@tanstack/react-query";
import { type ReactNode, useState } from "react";
import { client, type Schemas } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { Button, Dialog } from "../../parts/index.ts";
import { dateText, figureText, t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { useSignedIn } from "../session.ts";
import { TicketDialog } from "./ticket-dialog.tsx";

type Page = Schemas["VehiclePage"];
type Kept = Page["tickets"][number];
const kg = (value: number): string => figureText({ value, unit: "kg" });

/** The weighbridge tickets of a vehicle, newest first, and which of them the masses come from. */
export function WeighedCard({ page }: { readonly page: Page }) {
  const { id, name } = page.summary;
  const mayWrite = useSignedIn().may.includes("vehicle.write");
  const [isAdding, setAdding] = useState(false);
  const [leaving, setLeaving] = useState<Kept | null>(null);
  const { weighed, tickets } = page;
  const used = tickets.find((kept) => kept.id === weighed?.ticketId);
  return (
    <section className="card stack-tight" aria-labelledby="weighed-title">
      <h2 id="weighed-title">{t("fleet.weighed")}</h2>
      {used === undefined ? (
        <p>{t("fleet.weighed.none")}</p>
      ) : (
        <p>
          {t("fleet.weighed.on", {
            reference: used.ticket.reference,
            on: dateText(used.ticket.weighedOn, "full"),
          })}
        </p>
      )}
      {weighed?.isOlderThanFitting === true && <p className="field-error">{t("fleet.weighed.older")}</p>}
      <ul className="versions">
        {[...tickets].reverse().map((kept) => (
          <TicketLine key={kept.id} kept={kept} isUsed={kept.id === used?.id}>
            {mayWrite && kept.withdrawnAt === null && (
              <Button look="quiet" onPress={() => setLeaving(kept)}>
                {t("fleet.weighed.withdraw")}
              </Button>
            )}
          </TicketLine>
        ))}
      </ul>
      {mayWrite && (
        <div>
          <Button onPress={() => setAdding(true)}>{t("fleet.weighed.add")}</Button>
        </div>
      )}
      {isAdding && <TicketDialog id={id} name={name} onClose={() => setAdding(false)} />}
      {leaving !== null && <WithdrawDialog id={id} kept={leaving} onClose={() => setLeaving(null)} />}
    </section>
  );
}

interface TicketLineProps {
  readonly kept: Kept;
  readonly isUsed: boolean;
  readonly children: ReactNode;
}

function TicketLine({ kept, isUsed, children }: TicketLineProps) {
  const { weighedOn, frontKg, rearKg, reference, aboard } = kept.ticket;
  const state =
    kept.withdrawnAt !== null ? t("fleet.weighed.withdrawn") : isUsed ? t("fleet.weighed.used") : null;
  return (
    <li>
      <div className="row spread">
        <span>
          {t("fleet.weighed.line", {
            on: dateText(weighedOn, "short"),
            front: kg(frontKg),
            rear: kg(rearKg),
            total: kg(frontKg + rearKg),
          })}{" "}
          {state !== null && <strong>· {state}</strong>}
        </span>
        {children}
      </div>
      <p className="quiet">
        {t("fleet.weighed.aboard", {
          reference,
          fuel: figureText({ value: aboard.fuelShare, unit: "share" }),
          water: figureText({ value: aboard.waterLitres, unit: "L" }),
          cylinders: aboard.lpgCylinders,
          people: kg(aboard.frontPeopleKg + aboard.rearPeopleKg),
          by: kept.by,
        })}
      </p>
    </li>
  );
}

interface WithdrawDialogProps {
  readonly id: string;
  readonly kept: Kept;
  readonly onClose: () => void;
}

function WithdrawDialog({ id, kept, onClose }: WithdrawDialogProps) {
  const queries = useQueryClient();
  const path = { id, ticketId: kept.id };
  const withdraw = useMutation({
    mutationFn: () => take(client.DELETE("/api/vehicles/{id}/tickets/{ticketId}", { params: { path } })),
    onSuccess: async () => {
      await queries.invalidateQueries({ queryKey: ["vehicle", id] });
      await queries.invalidateQueries({ queryKey: ["vehicles"] });
      onClose();
    },
  });
  const title = t("fleet.weighed.withdrawTitle", { reference: kept.ticket.reference });
  return (
    <Dialog title={title} isOpen onClose={onClose}>
      <p>{t("fleet.weighed.withdrawNote")}</p>
      <FailureNote failure={withdraw.error} />
      <div className="row row-end">
        <Button look="danger" isPending={withdraw.isPending} onPress={() => withdraw.mutate()}>
          {t("fleet.weighed.withdraw")}
        </Button>
      </div>
    </Dialog>
  );
}
