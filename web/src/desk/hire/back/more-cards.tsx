import { t } from "../../../parts/words.ts";
import type { PartProps } from "../use-hire.ts";
import { ClaimsCard, CleaningCard } from "./later-cards.tsx";
import { LossCard } from "./loss-card.tsx";
import { LostCard } from "./lost-card.tsx";
import { FilesCard, NoticesCard } from "./outside-cards.tsx";
import { useSettlement } from "./use-settlement.ts";

/** What a settlement may need beside its lines: cleaning, what came later, fines, files, what was left behind. */
export function MoreCards({ page }: PartProps) {
  const { id } = page.hire;
  const { data: state } = useSettlement(id);
  if (state === undefined) return null;
  const card = { hireId: id, state };
  return (
    <section className="card" aria-labelledby="beside-title">
      <h2 id="beside-title">{t("settling.beside")}</h2>
      <CleaningCard {...card} />
      <LossCard {...card} />
      {state.frozenAt !== null && <ClaimsCard {...card} />}
      <NoticesCard {...card} />
      <FilesCard {...card} />
      <LostCard {...card} />
    </section>
  );
}
