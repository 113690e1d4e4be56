import type { Schemas } from "../../api/client.ts";
import { problemAt } from "../../api/failure.ts";
import { DateField } from "../../parts/index.ts";
import { dateText, t } from "../../parts/words.ts";
import { KeepRow } from "../keep-row.tsx";
import { KeptMeanwhile } from "../meanwhile/kept-meanwhile.tsx";
import type { GuardedDraft } from "../meanwhile/use-guarded-draft.ts";
import type { PriceDraft } from "./price-draft.ts";

interface KeepCardProps {
  readonly now: Schemas["FirmPrices"];
  readonly draft: GuardedDraft<PriceDraft>;
  readonly save: {
    readonly isPending: boolean;
    readonly mutate: () => void;
    readonly error: unknown;
    readonly reset: () => void;
  };
  /** lines that are new, changed or taken out */
  readonly changes: number;
}

/** From which day the lists hold, and what becomes of versions that hold from a later one. */
export function KeepCard({ now, draft, save, changes }: KeepCardProps) {
  const { validFrom } = draft.value;
  const before = now.later.filter((each) => each.validFrom <= validFrom);
  const later = now.later.filter((each) => each.validFrom > validFrom);
  const like = before.at(-1)?.like ?? 0;
  return (
    <section className="card stack-tight" aria-labelledby="keep-title">
      <h2 id="keep-title" tabIndex={-1}>
        {t("firmPrices.keepTitle")}
      </h2>
      <p>{changes === 0 ? t("firmPrices.nothingToKeep") : t("firmPrices.notKept", { n: changes })}</p>
      <div className="price-keep">
        <DateField
          label={t("rates.validFrom")}
          note={t("firmPrices.validFromNote")}
          value={validFrom}
          onChange={(next) => draft.set({ ...draft.value, validFrom: next })}
          error={problemAt(save.error, "validFrom")}
        />
      </div>
      {like !== 0 && (
        <p className="strip-say-trouble">
          {t("firmPrices.laterReplaced", { from: dateText(before.at(-1)?.validFrom ?? validFrom, "full") })}
        </p>
      )}
      {later.map((each) => {
        const from = dateText(each.validFrom, "full");
        return (
          <p key={each.versionId}>
            {t(each.like === like ? "firmPrices.laterFollows" : "firmPrices.laterStays", { from })}
          </p>
        );
      })}
      <KeptMeanwhile draft={draft} failure={save.error} onSettled={save.reset} shown={["validFrom"]} />
      <KeepRow
        label={t("firmPrices.keep")}
        save={save}
        draft={draft}
        isUnfit={validFrom === "" || changes === 0}
      />
    </section>
  );
}
