import type { Schemas } from "../../api/client.ts";

type Times = Schemas["DepotTimes"]["times"];

/** What every card of the page gets. */
export interface PieceProps {
  readonly value: Times;
  /** what holds where a depot has entered nothing */
  readonly usual: Times;
  readonly change: (part: Partial<Times>) => void;
  readonly failure: unknown;
  readonly mayWrite: boolean;
}
