import type { Quote } from "@setfair/engine";
import { useQuery } from "@tanstack/react-query";
import { client } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { NumberField } from "../../../parts/index.ts";
import { has, moneyText, say, t } from "../../../parts/words.ts";
import type { HirePageData } from "../use-hire.ts";

/** Number wanted of each extra, by its id in the terms. */
export type Extras = Readonly<Record<string, number>>;

/** What the quote holds now. */
export function extrasOf(page: HirePageData): Extras {
  const quote = page.quote?.result as Quote | null | undefined;
  const lines = quote?.lines.filter(({ code }) => code === "extra") ?? [];
  return Object.fromEntries(lines.map(({ about, count }) => [about, count]));
}

export interface ExtrasFormProps {
  readonly value: Extras;
  readonly set: (next: Extras) => void;
}

/** What may be taken along, at the terms that hold today. */
export function ExtrasForm({ value, set }: ExtrasFormProps) {
  const terms = useQuery({
    queryKey: ["terms"],
    queryFn: () => take(client.GET("/api/terms")),
    staleTime: 300_000,
  });
  const extras = terms.data?.hire?.terms.extras ?? [];
  if (extras.length === 0) return null;
  return (
    <div className="stack-tight">
      <h3>{t("quote.extras")}</h3>
      <div className="sheet-fields">
        {extras.map(({ id, pence, per }) => (
          <NumberField
            key={id}
            label={has(`quoteAbout.${id}`) ? say(`quoteAbout.${id}`) : id}
            note={t("quote.extraPrice", { price: moneyText({ currency: "GBP", pence }), per })}
            value={value[id] ?? 0}
            min={0}
            max={20}
            stepper
            onChange={(count) => set({ ...value, [id]: count ?? 0 })}
          />
        ))}
      </div>
    </div>
  );
}
