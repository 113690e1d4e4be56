import { useQuery } from "@tanstack/react-query";
import { client } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { ChoiceField, NumberField, SelectField, TextField } from "../../../parts/index.ts";
import { moneyText, t } from "../../../parts/words.ts";
import { useSignedIn } from "../../session.ts";
import type { DiscountDraft } from "./discount-draft.ts";

export interface DiscountFormProps {
  readonly value: DiscountDraft;
  readonly set: (next: DiscountDraft) => void;
  /** what the nights cost, whole pence; null before there is a quote */
  readonly nightsPence: number | null;
}

/** What may be taken off, as a share or a sum, within what the terms let this person give. */
export function DiscountForm({ value, set, nightsPence }: DiscountFormProps) {
  const { role } = useSignedIn().user;
  const terms = useQuery({
    queryKey: ["terms"],
    queryFn: () => take(client.GET("/api/terms")),
    staleTime: 300_000,
  });
  const discounts = terms.data?.hire?.terms.discounts ?? [];
  if (discounts.length === 0) return null;
  const most = discounts.find(({ id }) => id === value.kind)?.mostPercent[role] ?? 0;
  const none = { value: "none", label: t("rates.noDiscount") };
  return (
    <details open={value.kind !== null}>
      <summary className="fold">{t("rates.discountOpen")}</summary>
      <div className="sheet-fields">
        <SelectField
          label={t("rates.discountKind")}
          value={value.kind ?? "none"}
          options={[
            none,
            ...discounts.map(({ id }) => ({ value: id, label: t("rates.discountOf", { kind: id }) })),
          ]}
          onChange={(kind) => set({ ...value, kind: kind === "none" ? null : kind })}
        />
        {value.kind !== null && most === 0 && <p className="quiet">{t("depot.noneForYou")}</p>}
        {value.kind !== null && most > 0 && (
          <>
            <ChoiceField
              label={t("depot.discountBy")}
              value={value.by}
              options={(["percent", "pence"] as const).map((by) => ({
                value: by,
                label: t("depot.discountIn", { by }),
              }))}
              onChange={(by) => set({ ...value, by })}
            />
            <Amount value={value} set={set} note={mostText(most, nightsPence)} />
            <TextField
              label={t("rates.discountReason")}
              value={value.reason}
              onChange={(reason) => set({ ...value, reason })}
            />
          </>
        )}
      </div>
    </details>
  );
}

function mostText(most: number, nightsPence: number | null): string {
  const pence = nightsPence === null ? null : Math.round((nightsPence * most) / 100);
  return t("depot.mayGiveSum", {
    most,
    sum: pence === null ? "none" : moneyText({ currency: "GBP", pence }),
  });
}

function Amount({ value, set, note }: Omit<DiscountFormProps, "nightsPence"> & { readonly note: string }) {
  return value.by === "percent" ? (
    <NumberField
      label={t("rates.percent")}
      unit="%"
      note={note}
      value={value.percent}
      min={0}
      max={100}
      onChange={(percent) => set({ ...value, percent: percent ?? 0 })}
    />
  ) : (
    <NumberField
      label={t("depot.sumOff")}
      unit="£"
      note={note}
      value={value.pence / 100}
      min={0}
      max={100_000}
      format={{ minimumFractionDigits: 2, maximumFractionDigits: 2 }}
      onChange={(pounds) => set({ ...value, pence: Math.round((pounds ?? 0) * 100) })}
    />
  );
}
