import type { Schemas } from "../../api/client.ts";

export type Kept = Schemas["DepotFigures"];
type Figures = Kept["figures"];

/** What every card of the page gets. */
export interface PieceProps {
  readonly value: Figures;
  readonly kept: Kept;
  readonly change: (part: Partial<Figures>) => void;
  readonly failure: unknown;
  readonly mayWrite: boolean;
}
