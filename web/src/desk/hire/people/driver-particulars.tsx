import { useMutation } from "@tanstack/react-query";
import { useState } from "react";
import { client, type Schemas } from "../../../api/client.ts";
import { problemAt, take } from "../../../api/failure.ts";
import { Button, TextField } from "../../../parts/index.ts";
import { dateText, t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import { queries } from "../../query-client.ts";
import { useDraft } from "../../use-draft.ts";

interface DriverParticularsProps {
  readonly hireId: string;
  readonly check: Schemas["DriverChecks"]["drivers"][number];
}

/** Where a driver lives and the number of the licence: what a notice of a fine asks for. */
export function DriverParticulars({ hireId, check }: DriverParticularsProps) {
  const path = { id: hireId, driverId: check.driverId };
  // the number is never kept in the draft
  const [licenceNumber, setNumber] = useState("");
  const draft = useDraft(`particulars.${hireId}.${check.driverId}`, check.address ?? "");
  const keep = useMutation({
    mutationFn: () =>
      take(
        client.PUT("/api/hires/{id}/drivers/{driverId}/particulars", {
          params: { path },
          body: {
            ...(draft.isDirty && draft.value.trim() !== "" ? { address: draft.value } : {}),
            ...(licenceNumber.trim() === "" ? {} : { licenceNumber }),
          },
        }),
      ),
    onSuccess: () => {
      setNumber("");
      draft.done();
      show.reset();
      void queries.invalidateQueries({ queryKey: ["driverChecks"] });
    },
  });
  const show = useMutation({
    mutationFn: () =>
      take(client.POST("/api/hires/{id}/drivers/{driverId}/licence-number/reading", { params: { path } })),
  });
  return (
    <>
      <div className="sheet-fields">
        <TextField
          label={t("hirerCard.driverAddress")}
          note={t("hirerCard.driverAddressNote")}
          value={draft.value}
          onChange={draft.set}
          error={problemAt(keep.error, "address")}
          autoComplete="off"
        />
        <TextField
          label={t("hirerCard.number")}
          note={
            check.numberUntil === null
              ? t("hirerCard.numberNote")
              : t("hirerCard.numberKept", { date: dateText(check.numberUntil, "full") })
          }
          value={licenceNumber}
          onChange={setNumber}
          error={problemAt(keep.error, "licenceNumber")}
          autoComplete="off"
        />
      </div>
      {show.data !== undefined && (
        <p>
          <strong>{t("hirerCard.theNumber", { number: show.data.licenceNumber })}</strong>
        </p>
      )}
      <FailureNote failure={keep.error ?? show.error} shown={["address", "licenceNumber"]} />
      <div className="row">
        <Button
          onPress={() => keep.mutate()}
          isPending={keep.isPending}
          isDisabled={licenceNumber.trim() === "" && !draft.isDirty}
        >
          {t("hirerCard.keepParticulars")}
        </Button>
        {check.numberUntil !== null && (
          <Button look="quiet" onPress={() => show.mutate()}>
            {t("hirerCard.showNumber")}
          </Button>
        )}
      </div>
    </>
  );
}
