import { useMutation } from "@tanstack/react-query";
import { useState } from "react";
import { client, type Schemas } from "../../../api/client.ts";
import { problemAt, take } from "../../../api/failure.ts";
import { Button, TextField } from "../../../parts/index.ts";
import { dateText, t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import { DropDraft } from "../../keep-row.tsx";
import { KeptMeanwhile } from "../../meanwhile/kept-meanwhile.tsx";
import { sendOrRead, useGuardedDraft } from "../../meanwhile/use-guarded-draft.ts";
import { queries } from "../../query-client.ts";

interface DriverParticularsProps {
  readonly hireId: string;
  readonly check: Schemas["DriverChecks"]["drivers"][number];
}

interface Particulars {
  readonly address: string;
  /** which number: that somebody gave then, or the one in the field; never the number itself */
  readonly licenceNumber: string;
}

const numberText = ({ numberUntil, numberGiven }: DriverParticularsProps["check"]): string =>
  numberUntil === null
    ? ""
    : numberGiven === null
      ? t("meanwhile.licenceNumber", { given: "yes" })
      : t("meanwhile.numberOf", { by: numberGiven.by, at: dateText(numberGiven.at, "dayTime") });

/** Where a driver lives and the number of the licence: what a notice of a fine asks for. */
export function DriverParticulars({ hireId, check }: DriverParticularsProps) {
  const path = { id: hireId, driverId: check.driverId };
  // the number is never kept in the draft, only that one was typed
  const [number, setNumber] = useState("");
  const draft = useGuardedDraft<Particulars>(`particulars.${hireId}.${check.driverId}`, {
    value: { address: check.address ?? "", licenceNumber: numberText(check) },
    version: check.versions.particulars,
  });
  const { value, set, basedOn, base } = draft;
  const typed = t("meanwhile.typed");
  const licenceNumber = value.licenceNumber === typed ? number.trim() : "";
  const address = value.address.trim();
  const keep = useMutation({
    mutationFn: () =>
      sendOrRead(
        () =>
          take(
            client.PUT("/api/hires/{id}/drivers/{driverId}/particulars", {
              params: { path, query: { basedOn } },
              body: {
                ...(address !== "" && address !== base.address ? { address } : {}),
                ...(licenceNumber === "" ? {} : { licenceNumber }),
              },
            }),
          ),
        () => queries.invalidateQueries({ queryKey: ["driverChecks"] }),
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
          value={value.address}
          onChange={(text) => set({ ...value, address: text })}
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
          value={licenceNumber === "" ? "" : number}
          onChange={(text) => {
            setNumber(text);
            set({ ...value, licenceNumber: text.trim() === "" ? base.licenceNumber : typed });
          }}
          error={problemAt(keep.error, "licenceNumber")}
          autoComplete="off"
        />
      </div>
      {show.data !== undefined && (
        <p>
          <strong>{t("hirerCard.theNumber", { number: show.data.licenceNumber })}</strong>
        </p>
      )}
      <KeptMeanwhile
        draft={draft}
        failure={keep.error}
        onSettled={keep.reset}
        shown={["address", "licenceNumber"]}
      />
      <FailureNote failure={show.error} />
      <div className="row">
        <Button
          onPress={() => keep.mutate()}
          isPending={keep.isPending}
          isDisabled={licenceNumber === "" && (address === "" || address === base.address)}
        >
          {t("hirerCard.keepParticulars")}
        </Button>
        <DropDraft draft={draft} />
        {check.numberUntil !== null && (
          <Button look="quiet" onPress={() => show.mutate()}>
            {t("hirerCard.showNumber")}
          </Button>
        )}
      </div>
    </>
  );
}
