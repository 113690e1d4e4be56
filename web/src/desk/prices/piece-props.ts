import type { Schemas } from "../../api/client.ts";
import type { PriceDraft } from "./price-draft.ts";

/** What every card of the page gets. */
export interface PieceProps {
  readonly now: Schemas["FirmPrices"];
  /** the lists as they are kept */
  readonly kept: PriceDraft;
  readonly value: PriceDraft;
  readonly change: (part: Partial<PriceDraft>) => void;
  readonly mayWrite: boolean;
  /** the day since which most lines have been as they are; null where there are none */
  readonly since: string | null;
}
