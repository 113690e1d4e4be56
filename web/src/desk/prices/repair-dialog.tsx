import { MARK_KINDS } from "@setfair/engine";
import { useState } from "react";
import type { Schemas } from "../../api/client.ts";
import { ChoiceField, NumberField, SelectField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { LineDialog, SumField, useTried } from "./line-dialog.tsx";
import { type RepairLine, type RepairPrice, repairId, repairLine } from "./price-draft.ts";
import { percentOf, shareOf } from "./price-words.ts";
import { repairOptions } from "./things.ts";
import { WearFields } from "./wear-fields.tsx";

/** what a repair that replaces nothing carries along: it does not count then */
const NO_WEAR = { lifeYears: 10, leastShare: 0 };
const WORKS = ["repair", "replace"] as const;

interface RepairDialogProps {
  readonly now: Schemas["FirmPrices"];
  readonly repairs: readonly RepairLine[];
  /** null: a new price */
  readonly line: RepairLine | null;
  /** for which thing; "" for none yet */
  readonly of: string;
  readonly onClose: () => void;
  readonly onDone: (place: string | null, line: RepairLine | null) => void;
}

interface Fields {
  readonly of: string;
  readonly kind: RepairPrice["kind"] | null;
  readonly upToMm: number | null;
  readonly price: number | null;
  readonly part: RepairPrice["part"];
  readonly years: number | null;
  readonly least: number | null;
}

const fieldsOf = (line: RepairLine | null, of: string): Fields => ({
  of,
  kind: line?.kind ?? null,
  upToMm: line?.upToMm ?? null,
  price: line === null ? null : line.pence / 100,
  part: line?.part ?? "repair",
  years: line?.part === "replace" ? line.lifeYears : null,
  least: line?.part === "replace" ? percentOf(line.leastShare) : 0,
});

/** The price that the fields say; null while something is missing. */
function priceOf({ of, kind, upToMm, price, part, years, least }: Fields): RepairPrice | null {
  if (of === "" || kind === null || price === null) return null;
  const about = { of, kind, ...(upToMm === null ? {} : { upToMm }), pence: Math.round(price * 100) };
  if (part === "repair") return { ...about, part, ...NO_WEAR };
  return years === null || least === null
    ? null
    : { ...about, part, lifeYears: years, leastShare: shareOf(least) };
}

/** The price of one repair: what, how damaged, up to which size. */
export function RepairDialog({ now, repairs, line, of, onClose, onDone }: RepairDialogProps) {
  const [fields, setFields] = useState(() => fieldsOf(line, of));
  const { isTried, setTried, needed } = useTried();
  const set = (part: Partial<Fields>) => setFields({ ...fields, ...part });
  const price = priceOf(fields);
  const isTwice =
    price !== null && repairs.some(({ id }) => id === repairId(price) && id !== (line?.id ?? null));
  const send = () => {
    setTried(true);
    if (price !== null && !isTwice) onDone(line?.id ?? null, repairLine(price));
  };
  return (
    <LineDialog
      title={t(line === null ? "firmPrices.repairs.add" : "firmPrices.repairs.change")}
      onClose={onClose}
      onSend={send}
      onTakeOut={line === null ? null : () => onDone(line.id, null)}
    >
      <SelectField
        label={t("firmPrices.thing")}
        value={fields.of === "" ? null : fields.of}
        options={repairOptions(now, fields.of)}
        onChange={(next) => set({ of: next })}
        error={needed(fields.of)}
      />
      <div className="sheet-fields">
        <SelectField
          label={t("firmPrices.repairs.kind")}
          value={fields.kind}
          options={MARK_KINDS.map((kind) => ({
            value: kind,
            label: t("firmPrices.kind", { kind }),
          }))}
          onChange={(kind) => set({ kind })}
          error={needed(fields.kind)}
        />
        <NumberField
          label={t("firmPrices.repairs.upTo")}
          unit="mm"
          note={t("firmPrices.repairs.upToNote")}
          value={fields.upToMm}
          min={1}
          max={5000}
          onChange={(upToMm) => set({ upToMm })}
          error={isTried && isTwice ? t("firmPrices.repairs.twice") : undefined}
        />
      </div>
      <SumField
        label={t("firmPrices.repairs.price")}
        value={fields.price}
        onChange={(next) => set({ price: next })}
        error={needed(fields.price)}
      />
      <ChoiceField
        label={t("firmPrices.repairs.work")}
        value={fields.part}
        options={WORKS.map((work) => ({ value: work, label: t("firmPrices.work", { work }) }))}
        onChange={(part) => set({ part })}
      />
      {fields.part === "replace" && (
        <WearFields
          years={fields.years}
          least={fields.least}
          onYears={(years) => set({ years })}
          onLeast={(least) => set({ least })}
          errors={{ years: needed(fields.years), least: needed(fields.least) }}
        />
      )}
    </LineDialog>
  );
}
