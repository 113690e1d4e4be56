import type { PartProps } from "../use-hire.ts";
import { ClaimsCard, CleaningCard } from "./later-cards.tsx";
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
    <>
      <CleaningCard {...card} />
      {state.frozenAt !== null && <ClaimsCard {...card} />}
      <NoticesCard {...card} />
      <FilesCard {...card} />
      <LostCard {...card} />
    </>
  );
}
