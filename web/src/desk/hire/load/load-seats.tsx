import { seatRows, type VehicleDescription } from "@setfair/engine";
import type { Schemas } from "../../../api/client.ts";
import { SelectField } from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import type { HirePageData } from "../use-hire.ts";
import { seatPlaces } from "./seat-places.ts";

type Plan = Schemas["LoadPlan"];

export interface LoadSeatsProps {
  readonly page: HirePageData;
  readonly vehicle: VehicleDescription;
  readonly plan: Plan;
  readonly set: (plan: Plan) => void;
}

/** Where each person sits; a seat can be changed, a person never stays behind. */
export function LoadSeats({ page, vehicle, plan, set }: LoadSeatsProps) {
  const rows = seatRows(vehicle);
  if (rows.length === 0) return null;
  const places = seatPlaces(plan.seats, rows);
  return (
    <div className="sheet-fields">
      {page.party.travellers.map((traveller, k) => {
        return (
          <SelectField
            key={traveller.id}
            label={t("load.seatOf", { name: traveller.name ?? String(k + 1) })}
            value={places.get(traveller.id) ?? null}
            onChange={(chosen) => {
              const row = rows.find((each) => each.place === chosen);
              if (row === undefined) return;
              const others = plan.seats.filter(({ travellerId }) => travellerId !== traveller.id);
              const sits = {
                travellerId: traveller.id,
                behindFrontAxleM: row.behindFrontAxleM,
                place: row.place,
              };
              set({ ...plan, seats: [...others, sits] });
            }}
            options={rows.map((row) => ({ value: row.place, label: t(`load.seat.${row.place}`) }))}
          />
        );
      })}
    </div>
  );
}
