import { NumberField, SelectField } from "../../parts/index.ts";
import { has, say, t } from "../../parts/words.ts";
import { MONEY_FORMAT, penceOf, pounds, type TermsDraft } from "./terms-draft.ts";

type Vat = TermsDraft["abroad"]["vat"];
const VAT_KINDS = ["standard", "exempt", "outsideScope"] as const;

/** The name of a charge or an extra; what the firm called it where it is the firm's own. */
export const chargeName = (id: string): string => (has(`quoteAbout.${id}`) ? say(`quoteAbout.${id}`) : id);

interface AmountProps {
  readonly label: string;
  readonly pence: number;
  readonly onChange: (pence: number) => void;
}

/** A sum in pounds, kept in pence. */
export function Amount({ label, pence, onChange }: AmountProps) {
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

interface VatFieldProps {
  readonly value: Vat;
  readonly onChange: (vat: Vat) => void;
  /** where a label alone does not say of what */
  readonly label?: string;
}

/** How VAT falls on a charge: the firm's word, with its accountant. */
export function VatField({ value, onChange, label = t("rateMore.vat") }: VatFieldProps) {
  return (
    <SelectField<Vat>
      label={label}
      value={value}
      options={VAT_KINDS.map((kind) => ({ value: kind, label: t("rateMore.vatKind", { kind }) }))}
      onChange={onChange}
    />
  );
}
