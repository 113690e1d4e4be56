import { BALANCE_DAYS_BEFORE, windowsOf } from "@setfair/engine";
import { Button, NumberField, SelectField, TextField } from "../../parts/index.ts";
import { has, say, t } from "../../parts/words.ts";
import { replaced } from "../replaced.ts";
import { MONEY_FORMAT, type PieceProps, penceOf, pounds } from "./terms-draft.ts";

const nameOf = (id: string): string => (has(`quoteAbout.${id}`) ? say(`quoteAbout.${id}`) : id);

function Amount({
  label,
  pence,
  onChange,
}: {
  readonly label: string;
  readonly pence: number;
  readonly onChange: (pence: number) => void;
}) {
  return (
    <NumberField
      label={label}
      unit="£"
      value={pounds(pence)}
      min={0}
      max={100_000}
      format={MONEY_FORMAT}
      onChange={(amount) => onChange(penceOf(amount))}
    />
  );
}

/** What every hire pays, what may be added, and what is held. */
export function ChargeFields({ value, change }: PieceProps) {
  const { compulsory, abroad, drivers, security, allowance } = value;
  return (
    <section className="card stack" aria-labelledby="charges-title">
      <h2 id="charges-title">{t("rates.charges")}</h2>
      <fieldset className="fields">
        <legend>{t("rates.always")}</legend>
        <div className="sheet-fields">
          {compulsory.map((each, k) => (
            <Amount
              key={each.id}
              label={nameOf(each.id)}
              pence={each.pence}
              onChange={(pence) => change({ compulsory: replaced(compulsory, k, { ...each, pence }) })}
            />
          ))}
          <Amount
            label={t("rates.abroadCharge")}
            pence={abroad.pence}
            onChange={(pence) => change({ abroad: { ...abroad, pence } })}
          />
          <Amount
            label={t("rates.driverEach", { n: drivers.included })}
            pence={drivers.extraPenceEach}
            onChange={(extraPenceEach) => change({ drivers: { ...drivers, extraPenceEach } })}
          />
        </div>
      </fieldset>
      <Extras value={value} change={change} failure={null} />
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
      <AfterHire value={value} change={change} />
    </section>
  );
}

/** What the hirer signs for about the time after: windows in hours, and the fee for dealing with a fine. */
function AfterHire({ value, change }: Pick<PieceProps, "value" | "change">) {
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
        <Amount
          label={t("settling.terms.noticeFee")}
          pence={tariff.noticeFeePence ?? 0}
          onChange={(noticeFeePence) => change({ tariff: { ...tariff, noticeFeePence } })}
        />
      </div>
    </fieldset>
  );
}

function Extras({ value, change }: PieceProps) {
  const { extras } = value;
  return (
    <fieldset className="fields">
      <legend>{t("rates.extras")}</legend>
      {extras.map((extra, k) => {
        const set = (part: Partial<typeof extra>) =>
          change({ extras: replaced(extras, k, { ...extra, ...part }) });
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: an extra is its place while its name is being typed
          <div key={k} className="span-row">
            <TextField
              label={t("rates.extraName")}
              note={has(`quoteAbout.${extra.id}`) ? say(`quoteAbout.${extra.id}`) : ""}
              value={extra.id}
              onChange={(id) => set({ id })}
            />
            <Amount label={t("rates.price")} pence={extra.pence} onChange={(pence) => set({ pence })} />
            <SelectField
              label={t("rates.per")}
              value={extra.per}
              options={(["hire", "night"] as const).map((per) => ({
                value: per,
                label: t("rates.perWhat", { per }),
              }))}
              onChange={(per) => set({ per })}
            />
            <NumberField
              label={t("rates.stock")}
              note={t("rates.stockNote")}
              value={extra.stock}
              min={0}
              max={1000}
              onChange={(n) => set({ stock: n ?? 0 })}
            />
            <Button look="quiet" onPress={() => change({ extras: replaced(extras, k, null) })}>
              {t("rates.remove", { name: nameOf(extra.id) })}
            </Button>
          </div>
        );
      })}
      <div>
        <Button
          look="quiet"
          onPress={() =>
            change({ extras: [...extras, { id: "", pence: 0, per: "hire", stock: 1, vat: "standard" }] })
          }
        >
          {t("rates.addExtra")}
        </Button>
      </div>
    </fieldset>
  );
}
