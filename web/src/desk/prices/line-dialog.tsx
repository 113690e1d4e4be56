import { type FormEvent, type ReactNode, useState } from "react";
import { Button, Dialog, NumberField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { MONEY_FORMAT } from "../terms/terms-draft.ts";

/** Whether the dialog was tried yet, and what to say at a field that is still empty. */
export function useTried() {
  const [isTried, setTried] = useState(false);
  const needed = (value: unknown) =>
    isTried && (value === null || value === "") ? t("firmPrices.needed") : undefined;
  return { isTried, setTried, needed };
}

interface LineDialogProps {
  readonly title: string;
  readonly onClose: () => void;
  /** puts it on the list, where nothing is missing */
  readonly onSend: () => void;
  /** null: it is not on the list yet */
  readonly onTakeOut: (() => void) | null;
  readonly children: ReactNode;
}

/** One line of a list: put it on, or take it off. Nothing is kept before the list is. */
export function LineDialog({ title, onClose, onSend, onTakeOut, children }: LineDialogProps) {
  const send = (event: FormEvent) => {
    event.preventDefault();
    onSend();
  };
  return (
    <Dialog title={title} isOpen onClose={onClose}>
      <form className="stack" onSubmit={send} noValidate>
        {children}
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
      </form>
    </Dialog>
  );
}

interface SumFieldProps {
  readonly label: string;
  /** in pounds */
  readonly value: number | null;
  readonly onChange: (value: number | null) => void;
  readonly error: string | undefined;
}

/** A sum with VAT. */
export function SumField(props: SumFieldProps) {
  return (
    <NumberField
      {...props}
      unit="£"
      note={t("firmPrices.withVat")}
      min={0}
      max={1_000_000}
      format={MONEY_FORMAT}
    />
  );
}
