import type { Schemas } from "../../api/client.ts";

export type Settings = Schemas["DepotSettings"];

/** A part of the form: the whole settings, and what changes of them. */
export interface PieceProps {
  readonly value: Settings;
  readonly change: (part: Partial<Settings>) => void;
  readonly failure: unknown;
}
