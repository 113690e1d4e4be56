import { useQuery } from "@tanstack/react-query";
import { client } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { NumberField, SelectField, TextField } from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import { useSignedIn } from "../../session.ts";
import type { DiscountDraft } from "./discount-draft.ts";

export interface DiscountFormProps {
  readonly value: DiscountDraft;
  readonly set: (next: DiscountDraft) => void;
}

/** What may be taken off, within what the terms let this person give. */
export function DiscountForm({ value, set }: DiscountFormProps) {
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
        {value.kind !== null && (
          <>
            <NumberField
              label={t("rates.percent")}
              unit="%"
              note={t("rates.mayGive", { most })}
              value={value.percent}
              min={0}
              max={100}
              onChange={(percent) => set({ ...value, percent: percent ?? 0 })}
            />
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
