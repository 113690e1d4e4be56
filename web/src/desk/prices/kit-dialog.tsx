import { type FormEvent, useState } from "react";
import type { Schemas } from "../../api/client.ts";
import { Button, Dialog, NumberField, SelectField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { MONEY_FORMAT } from "../terms/terms-draft.ts";
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
  const [isTried, setTried] = useState(false);
  const needed = (value: unknown) =>
    isTried && (value === null || value === "") ? t("firmPrices.needed") : undefined;
  const send = (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    if (id === "" || worth === null || years === null || least === null) return;
    const value = { newPence: Math.round(worth * 100), lifeYears: years, leastShare: shareOf(least) };
    onDone(line?.id ?? null, kitLine(id, value));
  };
  return (
    <Dialog
      title={t(line === null ? "firmPrices.kit.add" : "firmPrices.kit.change")}
      isOpen
      onClose={onClose}
    >
      <form className="stack" onSubmit={send} noValidate>
        <SelectField
          label={t("firmPrices.thing")}
          note={t("firmPrices.kit.thingNote")}
          value={id === "" ? null : id}
          options={kitOptions(now, kit, id)}
          onChange={setId}
          error={needed(id)}
        />
        <NumberField
          label={t("firmPrices.kit.worth")}
          unit="£"
          note={t("firmPrices.withVat")}
          value={worth}
          min={0}
          max={1_000_000}
          format={MONEY_FORMAT}
          onChange={setWorth}
          error={needed(worth)}
        />
        <WearFields
          years={years}
          least={least}
          onYears={setYears}
          onLeast={setLeast}
          errors={{ years: needed(years), least: needed(least) }}
        />
        <DialogEnd onTakeOut={line === null ? null : () => onDone(line.id, null)} />
      </form>
    </Dialog>
  );
}

/** What ends the dialog of a line: put it on the list, or take it out. Nothing is kept before the list is. */
export function DialogEnd({ onTakeOut }: { readonly onTakeOut: (() => void) | null }) {
  return (
    <>
      <p className="quiet">{t("firmPrices.keptLater")}</p>
      <div className="row row-end">
        {onTakeOut !== null && (
          <Button look="quiet" onPress={onTakeOut}>
            {t("firmPrices.takeOut")}
          </Button>
        )}
        <Button type="submit" look="main">
          {t("firmPrices.putOn")}
        </Button>
      </div>
    </>
  );
}
