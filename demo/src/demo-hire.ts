import type { Driver, LoadPlan, Party, Trip } from "@setfair/engine";
import type { AbroadDocument } from "@setfair/server";
import { addDays, yearsBefore } from "./dates.ts";

/** How far a hire of the demo has come. */
export type DemoStage =
  | "enquiry"
  | "quote"
  | "booked"
  | "onHire"
  | "returned"
  | "settled"
  | "closed"
  | "lost"
  | "cancelled"
  | "noShow";

export interface DemoCustomer {
  readonly name: string;
  readonly telephone: string;
  readonly email: string;
  readonly address: string;
}

export interface DemoHire {
  readonly stage: DemoStage;
  /** the same object for every hire of a customer who came again */
  readonly customer: DemoCustomer;
  readonly wishes: string;
  readonly from: string;
  readonly to: string;
  readonly vehicleId: string | null;
  readonly party: Party;
  readonly drivers: readonly Driver[];
  readonly trip: Trip | null;
  /** what was said and got together for a journey abroad */
  readonly abroad?: AbroadDocument;
  readonly load: LoadPlan | null;
  readonly paid: boolean;
  /** the walk-rounds are there record by record */
  readonly walked: boolean;
}

export const DEMO_TOWN = "Nowhere-on-Sea";

interface NewDriver {
  readonly id: string;
  readonly name: string;
  readonly age: number;
  readonly today: string;
  readonly checkedOn: string | null;
  /** may drive above 3,500 kg: passed before 1997 or took the test */
  readonly heavy?: boolean;
}

/** A driver with a British licence and nothing against them. */
export function demoDriver({ id, name, age, today, checkedOn, heavy }: NewDriver): Driver {
  const first = yearsBefore(today, age - 18);
  const to = addDays(yearsBefore(today, age - 70), -1);
  const categories = (heavy === true ? (["B", "C1"] as const) : (["B"] as const)).map((category) => ({
    category,
    from: first,
    to,
  }));
  return {
    id,
    name,
    born: yearsBefore(today, age),
    main: id === "t1",
    licence: {
      issuedBy: "GB",
      firstCarEntitlement: first,
      categories,
      photocardTo: addDays(today, 1700),
      endorsements: [],
      ...(checkedOn === null ? {} : { checkedOn }),
    },
    faultIncidents3y: 0,
    disqualified3y: false,
  };
}
