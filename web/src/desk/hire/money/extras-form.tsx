import type { Quote } from "@setfair/engine";
import { useQuery } from "@tanstack/react-query";
import { client } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { NumberField } from "../../../parts/index.ts";
import { has, moneyText, say, t } from "../../../parts/words.ts";
import type { HirePageData } from "../use-hire.ts";
import { type Sizes, sizedCount } from "./sizes.ts";
import "../abroad/abroad.css";

/** Number wanted of each extra, by its id in the terms. */
export type Extras = Readonly<Record<string, number>>;

/** What the quote holds now. */
export function extrasOf(page: HirePageData): Extras {
  const quote = page.quote?.result as Quote | null | undefined;
  const lines = quote?.lines.filter(({ code }) => code === "extra") ?? [];
  return Object.fromEntries(lines.map(({ about, count }) => [about, count]));
}

const MOST = 20;
const nameOf = (id: string): string => (has(`quoteAbout.${id}`) ? say(`quoteAbout.${id}`) : id);

export interface ExtrasFormProps {
  readonly value: Extras;
  readonly set: (next: Extras) => void;
  /** number wanted of each size */
  readonly sizes: Sizes;
  readonly setSizes: (next: Sizes) => void;
  /** sizes that the depot has, by the kind of thing */
  readonly known: ReadonlyMap<string, readonly string[]>;
}

/** What may be taken along, at the terms that hold today; where a thing comes in sizes, which. */
export function ExtrasForm({ value, set, sizes, setSizes, known }: ExtrasFormProps) {
  const terms = useQuery({
    queryKey: ["terms"],
    queryFn: () => take(client.GET("/api/terms")),
    staleTime: 300_000,
  });
  const extras = terms.data?.hire?.terms.extras ?? [];
  if (extras.length === 0) return null;
  const setSize = (id: string, size: string, count: number) => {
    const of = { ...sizes[id], [size]: count };
    setSizes({ ...sizes, [id]: of });
    set({ ...value, [id]: Math.max(value[id] ?? 0, sizedCount(of)) });
  };
  const setTotal = (id: string, count: number) => {
    // fewer than were asked for by size: the sizes are asked again
    if (count < sizedCount(sizes[id])) setSizes({ ...sizes, [id]: {} });
    set({ ...value, [id]: count });
  };
  const sized = extras.filter(({ id }) => (value[id] ?? 0) > 0 && (known.get(id)?.length ?? 0) > 0);
  return (
    <div className="stack-tight">
      <h3>{t("quote.extras")}</h3>
      <div className="sheet-fields">
        {extras.map(({ id, pence, per }) => (
          <NumberField
            key={id}
            label={nameOf(id)}
            note={t("quote.extraPrice", { price: moneyText({ currency: "GBP", pence }), per })}
            value={value[id] ?? 0}
            min={0}
            max={MOST}
            stepper
            onChange={(count) => setTotal(id, count ?? 0)}
          />
        ))}
      </div>
      {sized.map(({ id }) => (
        <fieldset key={id} className="fields">
          <legend>{t("depot.sizesOf", { what: nameOf(id) })}</legend>
          <p className="quiet">
            {t("depot.sizesNote", { any: (value[id] ?? 0) - sizedCount(sizes[id]), kind: id })}
          </p>
          <div className="sheet-fields">
            {known.get(id)?.map((size) => (
              <NumberField
                key={size}
                label={t("depot.sizeOf", { what: nameOf(id), size })}
                value={sizes[id]?.[size] ?? 0}
                min={0}
                max={MOST}
                stepper
                onChange={(count) => setSize(id, size, count ?? 0)}
              />
            ))}
          </div>
        </fieldset>
      ))}
    </div>
  );
}
