import { useState } from "react";
import type { Schemas } from "../../api/client.ts";
import { SelectField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { LineDialog, SumField, useTried } from "./line-dialog.tsx";
import { type KitLine, kitLine } from "./price-draft.ts";
import { percentOf, shareOf } from "./price-words.ts";
import { kitOptions } from "./things.ts";
import { WearFields } from "./wear-fields.tsx";

interface KitDialogProps {
  readonly now: Schemas["FirmPrices"];
  readonly kit: readonly KitLine[];
  /** null: a thing that has no value yet */
  readonly line: KitLine | null;
  /** which thing it begins with; "" for none */
  readonly thing: string;
  readonly onClose: () => void;
  /** `place`: the line that it takes the place of; `line` null: taken out */
  readonly onDone: (place: string | null, line: KitLine | null) => void;
}

/** The value of one thing. */
export function KitDialog({ now, kit, line, thing, onClose, onDone }: KitDialogProps) {
  const [id, setId] = useState(thing);
  const [worth, setWorth] = useState<number | null>(line === null ? null : line.newPence / 100);
  const [years, setYears] = useState<number | null>(line?.lifeYears ?? null);
  const [least, setLeast] = useState<number | null>(line === null ? 0 : percentOf(line.leastShare));
  const { setTried, needed } = useTried();
  const send = () => {
    setTried(true);
    if (id === "" || worth === null || years === null || least === null) return;
    const value = { newPence: Math.round(worth * 100), lifeYears: years, leastShare: shareOf(least) };
    onDone(line?.id ?? null, kitLine(id, value));
  };
  return (
    <LineDialog
      title={t(line === null ? "firmPrices.kit.add" : "firmPrices.kit.change")}
      onClose={onClose}
      onSend={send}
      onTakeOut={line === null ? null : () => onDone(line.id, null)}
    >
      <SelectField
        label={t("firmPrices.thing")}
        note={t("firmPrices.kit.thingNote")}
        value={id === "" ? null : id}
        options={kitOptions(now, kit, id)}
        onChange={setId}
        error={needed(id)}
      />
      <SumField label={t("firmPrices.kit.worth")} value={worth} onChange={setWorth} error={needed(worth)} />
      <WearFields
        years={years}
        least={least}
        onYears={setYears}
        onLeast={setLeast}
        errors={{ years: needed(years), least: needed(least) }}
      />
    </LineDialog>
  );
}
