import type { PartProps } from "../use-hire.ts";
import { DriverChecks } from "./driver-checks.tsx";
import { DriversForm } from "./drivers-form.tsx";
import { PartyForm } from "./party-form.tsx";
import { VehicleChoice } from "./vehicle-choice.tsx";

/** Who travels, who drives, and in which vehicle. */
export default function PeoplePart({ page }: PartProps) {
  return (
    <>
      <DriversForm page={page} />
      <DriverChecks page={page} />
      <PartyForm page={page} />
      <VehicleChoice page={page} />
    </>
  );
}
