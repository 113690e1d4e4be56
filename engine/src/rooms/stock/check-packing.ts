import type { RoomAnswer } from "../../base/finding.ts";
import type { IsoLocal } from "../../base/time.ts";
import { makeFinding } from "../make-finding.ts";
import { isGood } from "./stock-time.ts";
import type { StockItem } from "./types.ts";

export interface PackingInput {
  readonly item: StockItem;
  /** last moment of the hire that it goes with */
  readonly to: IsoLocal;
  /** a certificate is made out for one vehicle */
  readonly madeOutFor?: string;
  readonly vehicleId: string | null;
}

/**
 * Whether a thing may go aboard: a child seat, a first-aid kit or a paper that is over before the hire ends may
 * not, and nobody can let it pass; nor may a certificate made out for another vehicle.
 */
export function checkPacking({ item, to, madeOutFor, vehicleId }: PackingInput): RoomAnswer<null> {
  const about = { about: item.id, facts: { name: item.name } };
  const over = isGood(item, to)
    ? []
    : [
        makeFinding("diary", "stock.outOfDate", "refuse", "safety", {
          ...about,
          facts: { name: item.name, lastDay: item.expiresOn ?? item.retiredOn ?? "", to },
          mends: ["stock.another"],
        }),
      ];
  const other =
    madeOutFor === undefined || madeOutFor === vehicleId
      ? []
      : [
          makeFinding("countries", "stock.otherVehicle", "refuse", "law", {
            ...about,
            mends: ["stock.another"],
          }),
        ];
  return { result: null, findings: [...over, ...other] };
}
