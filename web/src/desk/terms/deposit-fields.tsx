import { BALANCE_DAYS_BEFORE, secondSignatureDays, windowsOf } from "@setfair/engine";
import { ChoiceField, NumberField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { Amount } from "./amount-field.tsx";
import type { PieceProps } from "./terms-draft.ts";

const LABOUR = ["inFull", "asParts"] as const;

/** What is held, how far a price goes, and for how long things stand. */
export function DepositFields({ value, change }: Pick<PieceProps, "value" | "change">) {
  const { security, allowance } = value;
  return (
    <fieldset className="fields">
      <legend>{t("rates.depositAndDistance")}</legend>
      <div className="sheet-fields">
        <NumberField
          label={t("rates.bookingDeposit")}
          unit="%"
          value={value.bookingDepositPercent}
          min={0}
          max={100}
          onChange={(n) => change({ bookingDepositPercent: n ?? 0 })}
        />
        <NumberField
          label={t("depot.balanceDays")}
          unit={t("depot.days")}
          value={value.balanceDaysBefore ?? BALANCE_DAYS_BEFORE}
          min={0}
          max={365}
          onChange={(n) => change({ balanceDaysBefore: n ?? BALANCE_DAYS_BEFORE })}
        />
        <Amount
          label={t("rates.depositHome")}
          pence={security.homePence}
          onChange={(homePence) => change({ security: { ...security, homePence } })}
        />
        <Amount
          label={t("rates.depositAbroad")}
          pence={security.abroadPence}
          onChange={(abroadPence) => change({ security: { ...security, abroadPence } })}
        />
        <Amount
          label={t("rates.excess")}
          pence={security.excessPence}
          onChange={(excessPence) => change({ security: { ...security, excessPence } })}
        />
        <NumberField
          label={t("rates.kmPerNight")}
          unit="km"
          value={allowance.kmPerNight}
          min={0}
          max={2000}
          onChange={(n) => change({ allowance: { ...allowance, kmPerNight: n ?? 0 } })}
        />
        <NumberField
          label={t("rates.excessPerKm")}
          unit="pence/km"
          value={allowance.excessPencePerKm}
          min={0}
          max={1000}
          onChange={(n) => change({ allowance: { ...allowance, excessPencePerKm: n ?? 0 } })}
        />
        <NumberField
          label={t("rateMore.gracePercent")}
          unit="%"
          note={t("rateMore.gracePercentNote")}
          value={allowance.gracePercent}
          min={0}
          max={100}
          onChange={(n) => change({ allowance: { ...allowance, gracePercent: n ?? 0 } })}
        />
        <NumberField
          label={t("rateMore.authorisationDays")}
          unit={t("depot.days")}
          note={t("rateMore.authorisationDaysNote")}
          value={security.authorisationDays}
          min={1}
          max={90}
          onChange={(n) => change({ security: { ...security, authorisationDays: n ?? 1 } })}
        />
        <NumberField
          label={t("rateMore.releaseWorkingDays")}
          unit={t("rateMore.workingDays")}
          note={t("rateMore.releaseWorkingDaysNote")}
          value={security.releaseWorkingDays}
          min={0}
          max={28}
          onChange={(n) => change({ security: { ...security, releaseWorkingDays: n ?? 0 } })}
        />
        <NumberField
          label={t("rates.quoteDays")}
          value={value.quoteDays}
          min={1}
          max={90}
          onChange={(n) => change({ quoteDays: n ?? 1 })}
        />
        <NumberField
          label={t("rates.maximumNights")}
          value={value.maximumNights}
          min={1}
          max={365}
          onChange={(n) => change({ maximumNights: n ?? 1 })}
        />
      </div>
    </fieldset>
  );
}

/** What the hirer signs for about the time after: windows in hours, and the fee for dealing with a fine. */
export function AfterFields({ value, change }: Pick<PieceProps, "value" | "change">) {
  const windows = windowsOf(value);
  const { tariff } = value;
  return (
    <fieldset className="fields">
      <legend>{t("settling.terms.title")}</legend>
      <div className="sheet-fields">
        {(["additionsHours", "secondLookHours"] as const).map((id) => (
          <NumberField
            key={id}
            label={t(`settling.terms.${id}`)}
            unit="h"
            value={windows[id]}
            min={1}
            max={168}
            onChange={(n) => change({ windows: { ...windows, [id]: n ?? 1 } })}
          />
        ))}
        <NumberField
          label={t("rateMore.secondAfter")}
          unit={t("depot.days")}
          note={t("rateMore.secondAfterNote")}
          value={secondSignatureDays(value)}
          min={0}
          max={60}
          onChange={(n) => change({ secondSignatureAfterDays: n ?? 0 })}
        />
        <Amount
          label={t("settling.terms.noticeFee")}
          pence={tariff.noticeFeePence ?? 0}
          onChange={(noticeFeePence) => change({ tariff: { ...tariff, noticeFeePence } })}
        />
      </div>
      <ChoiceField
        label={t("rateMore.labour")}
        note={t("rateMore.labourNote")}
        value={tariff.labour ?? "inFull"}
        options={LABOUR.map((labour) => ({ value: labour, label: t("rateMore.labourIs", { labour }) }))}
        onChange={(labour) => change({ tariff: { ...tariff, labour } })}
      />
    </fieldset>
  );
}
