import { useMutation, useQuery } from "@tanstack/react-query";
import { useState } from "react";
import { client, type Schemas } from "../../../api/client.ts";
import { problemAt, take } from "../../../api/failure.ts";
import { Button, DateField, TextField, TickField } from "../../../parts/index.ts";
import { dateText, t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import { sendOrRead } from "../../meanwhile/use-guarded-draft.ts";
import { queries } from "../../query-client.ts";
import { useSignedIn } from "../../session.ts";
import type { PartProps } from "../use-hire.ts";
import { DriverParticulars } from "./driver-particulars.tsx";

type Checks = Schemas["DriverChecks"];
type DriverCheck = Checks["drivers"][number];

/** How each named driver was looked up: the code's life, the look-up itself, and what was seen without a code. */
export function DriverChecks({ page }: PartProps) {
  const { id } = page.hire;
  const checks = useQuery({
    queryKey: ["driverChecks", id, page.version],
    queryFn: () => take(client.GET("/api/hires/{id}/driver-checks", { params: { path: { id } } })),
    placeholderData: (before: Checks | undefined) => before,
  });
  if (checks.data === undefined || checks.data.drivers.length === 0) return null;
  return (
    <section className="card sheet" aria-labelledby="checks-title">
      <h2 id="checks-title">{t("people.checks")}</h2>
      <p className="quiet">{t("people.checksLead")}</p>
      {checks.data.drivers.map((check) => {
        const driver = page.drivers?.find((each) => each.id === check.driverId);
        return driver === undefined ? null : (
          <OneDriver
            key={check.driverId}
            hireId={id}
            check={check}
            driver={driver}
            version={page.versions.drivers}
          />
        );
      })}
    </section>
  );
}

interface OneProps {
  readonly hireId: string;
  readonly check: DriverCheck;
  readonly driver: Schemas["Driver"];
  /** of all drivers, as they were read */
  readonly version: number;
}

function useChanged(hireId: string) {
  return () => {
    for (const kind of ["driverChecks", "reminders", "missing"])
      void queries.invalidateQueries({ queryKey: [kind] });
    void queries.invalidateQueries({ queryKey: ["hire", hireId] });
  };
}

function OneDriver({ hireId, check, driver, version }: OneProps) {
  return (
    <div className="line-box">
      <h3>
        {check.name}
        {check.mayDrive !== null && `: ${t(`people.mayDrive.${check.mayDrive}`)}`}
      </h3>
      <ul>
        {check.checks.map((each) => (
          <li key={each.at}>
            {each.how === "code"
              ? t("people.checkedByCode", { on: dateText(each.on, "full"), by: each.by })
              : t("people.checkedOther", {
                  on: dateText(each.on, "full"),
                  seen: each.seen ?? "",
                  by: each.by,
                })}
          </li>
        ))}
      </ul>
      {check.hasCode ? <Code hireId={hireId} check={check} /> : <p>{t("people.noCode")}</p>}
      <LookUp hireId={hireId} check={check} driver={driver} version={version} />
      <DriverParticulars hireId={hireId} check={check} />
    </div>
  );
}

function Code({ hireId, check }: Pick<OneProps, "hireId" | "check">) {
  const { today } = useSignedIn();
  const changed = useChanged(hireId);
  const [code, setCode] = useState("");
  const [madeOn, setMadeOn] = useState(today);
  // what was there when the first letter was typed; the code itself is kept in no draft
  const [begun, begin] = useState<number | null>(null);
  const basedOn = String(begun ?? check.versions.code);
  const path = { id: hireId, driverId: check.driverId };
  const seal = useMutation({
    mutationFn: () =>
      sendOrRead(
        () =>
          take(
            client.PUT("/api/hires/{id}/drivers/{driverId}/check-code", {
              params: { path, query: { basedOn } },
              body: { code, madeOn },
            }),
          ),
        async () => {
          // theirs stands above the field then; to press again is to take this one all the same
          await queries.invalidateQueries({ queryKey: ["driverChecks"] });
          begin(null);
        },
      ),
    onSuccess: () => {
      setCode("");
      begin(null);
      changed();
    },
  });
  const show = useMutation({
    mutationFn: () =>
      take(client.POST("/api/hires/{id}/drivers/{driverId}/check-code/reading", { params: { path } })),
  });
  const waiting = check.code;
  return (
    <>
      <p>
        {waiting === null
          ? t("people.askFrom", { from: dateText(check.askFrom, "full") })
          : t(waiting.isUsable ? "people.codeWaits" : "people.codeDead", {
              madeOn: dateText(waiting.madeOn, "full"),
              lastDay: dateText(waiting.lastDay, "full"),
            })}{" "}
        {show.data !== undefined && <strong>{t("people.theCode", { code: show.data.code })}</strong>}
      </p>
      <div className="sheet-fields">
        <TextField
          label={t("people.codeField")}
          value={code}
          onChange={(text) => {
            if (begun === null) begin(check.versions.code);
            setCode(text);
          }}
          autoComplete="off"
          error={problemAt(seal.error, "code")}
        />
        <DateField
          label={t("people.codeMade")}
          value={madeOn}
          onChange={setMadeOn}
          error={problemAt(seal.error, "madeOn")}
        />
      </div>
      <FailureNote failure={seal.error ?? show.error} />
      <div className="row">
        <Button
          onPress={() => seal.mutate()}
          isPending={seal.isPending}
          isDisabled={code.trim() === "" || madeOn === ""}
        >
          {t("people.keepCode")}
        </Button>
        {waiting?.isUsable === true && (
          <Button look="quiet" onPress={() => show.mutate()}>
            {t("people.showCode")}
          </Button>
        )}
      </div>
    </>
  );
}

function LookUp({ hireId, check, driver, version }: OneProps) {
  const changed = useChanged(hireId);
  const [consent, setConsent] = useState(false);
  const [seen, setSeen] = useState("");
  const keep = useMutation({
    mutationFn: (how: "code" | "other") =>
      sendOrRead(
        () =>
          take(
            client.POST("/api/hires/{id}/drivers/{driverId}/checks", {
              params: {
                path: { id: hireId, driverId: check.driverId },
                // the licence goes along as it stands here: another one kept meanwhile is not written over
                query: { basedOn: String(version) },
              },
              body: {
                how,
                consent,
                licence: driver.licence,
                ...(how === "other" && seen.trim() !== "" ? { seen } : {}),
              },
            }),
          ),
        async () => changed(),
      ),
    onSuccess: () => {
      setSeen("");
      changed();
    },
  });
  return (
    <>
      <p className="quiet">{t("people.saveFirst")}</p>
      <TickField value={consent} onChange={setConsent}>
        {t("people.consent")}
      </TickField>
      {check.code?.isUsable === true && (
        <div>
          <Button
            look="main"
            onPress={() => keep.mutate("code")}
            isPending={keep.isPending}
            isDisabled={!consent}
          >
            {t("people.seenWithCode")}
          </Button>
        </div>
      )}
      <details open={!check.hasCode}>
        <summary className="fold">{t("people.seenOther")}</summary>
        <TextField
          label={t("people.seenWhat")}
          value={seen}
          onChange={setSeen}
          error={problemAt(keep.error, "seen")}
        />
        <Button onPress={() => keep.mutate("other")} isDisabled={!consent || seen.trim() === ""}>
          {t("people.keepSeen")}
        </Button>
      </details>
      <FailureNote failure={keep.error} />
    </>
  );
}
