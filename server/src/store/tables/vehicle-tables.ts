/** A vehicle off the road, weighed, kept up and described; what its returns teach. */
import type { Scoped } from "./scoped.ts";

/** A vehicle that cannot be hired for a while, without a hire: MOT, workshop, laid up. */
export interface VehicleBlockTable extends Scoped {
  id: string;
  vehicle_id: string;
  kind: string;
  note: string;
  from_at: string;
  to_at: string;
  by_id: string;
  at: string;
}

/** A vehicle weighed by axle, with what was aboard. */
export interface WeighbridgeTicketTable extends Scoped {
  id: string;
  vehicle_id: string;
  weighed_on: string;
  document: string;
  by_id: string;
  at: string;
  withdrawn_at: string | null;
}

/** Something done to a vehicle or read off it on a day. */
export interface UpkeepEntryTable extends Scoped {
  id: string;
  vehicle_id: string;
  kind: string;
  on_day: string;
  document: string;
  by_id: string;
  at: string;
}

export interface DefectTable extends Scoped {
  id: string;
  vehicle_id: string;
  hire_id: string | null;
  class: string;
  document: string;
  by_id: string;
  at: string;
  closed_at: string | null;
  closed_by: string | null;
  closed_how: string | null;
}

export interface DefectDisclosureTable extends Scoped {
  id: string;
  defect_id: string;
  hire_id: string;
  signer: string;
  by_id: string;
  at: string;
}

/** A vehicle that is only listed: it is described before it can be hired. */
export interface VehicleDraftTable extends Scoped {
  id: string;
  registration: string;
  document: string;
  by_id: string;
  at: string;
}

/** What was used on a hire that is over. */
export interface UseReturnTable extends Scoped {
  id: string;
  vehicle_id: string;
  hire_id: string | null;
  returned_at: string;
  document: string;
  outcome: string | null;
  engine: string | null;
}

/** Rates learnt for a vehicle. */
export interface UseRateTable extends Scoped {
  vehicle_id: string;
  document: string;
  at: string;
}
