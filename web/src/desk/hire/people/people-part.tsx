import type { PartProps } from "../use-hire.ts";
import { DriverChecks } from "./driver-checks.tsx";
import { DriversForm } from "./drivers-form.tsx";
import { ErasureCard } from "./erasure-card.tsx";
import { HirerCard } from "./hirer-card.tsx";
import { PartyForm } from "./party-form.tsx";
import { VehicleChoice } from "./vehicle-choice.tsx";

/** Who drives, who travels, who hires, and in which vehicle. */
export default function PeoplePart({ page }: PartProps) {
  return (
    <>
      <DriversForm page={page} />
      <DriverChecks page={page} />
      <PartyForm page={page} />
      <HirerCard page={page} />
      <ErasureCard page={page} />
      <VehicleChoice page={page} />
    </>
  );
}
