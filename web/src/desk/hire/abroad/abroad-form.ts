import type { Schemas } from "../../../api/client.ts";

export type AbroadState = Schemas["AbroadState"];
export type Abroad = Schemas["Abroad"];
export interface AbroadFormProps {
  readonly value: Abroad;
  readonly set: (value: Abroad) => void;
  readonly error: unknown;
}
