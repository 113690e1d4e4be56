import { BODY_STYLES, SYSTEM_KINDS, systemModule, type VehicleDescription } from "@setfair/engine";

/** Invented vehicles for the tests: every fitted system with its defaults, in any body style. */
export function exampleVehicle(
  bodyStyle: VehicleDescription["bodyStyle"] = "panelVanConversion",
  dimensions: Partial<VehicleDescription["dimensions"]> = {},
): VehicleDescription {
  const low = bodyStyle === "campervan" || bodyStyle === "elevatingRoofCampervan";
  return {
    id: `example-${BODY_STYLES.indexOf(bodyStyle)}`,
    name: "Heron",
    registration: "SF26 HRN",
    bodyStyle,
    validFrom: "2026-01-01",
    firstRegistered: "2026-01-01",
    fuel: "diesel",
    category: "M1",
    emissionClass: "Euro 6",
    dimensions: {
      lengthM: low ? 5.0 : 5.99,
      widthM: 2.05,
      heightM: low ? 2.0 : 2.89,
      wheelbaseM: low ? 3.0 : 3.8,
      rearOverhangM: low ? 1.0 : 1.2,
      ...dimensions,
    },
    masses: {
      mamKg: 3500,
      technicalMaxKg: 3500,
      miroKg: 2930,
      miroBasis: { fuelShare: 0.9, driverKg: 75, waterShare: 0, lpgCylinders: 1, weighed: false },
      miroFrontKg: 1500,
      axleMaxKg: { front: 1850, rear: 2000 },
      options: [],
    },
    body: { floorAreaM2: 8, volumeM3: 16, lossWK: 55, capacityWhK: 120, airChangesPerHour: 0.5 },
    consumption: { litresPer100Km: 9 },
    systems: SYSTEM_KINDS.map((kind) => ({ id: kind, kind, spec: specOf(kind) })),
  };
}

/** Some value for every field that a system cannot do without. */
function specOf(kind: string): Record<string, unknown> {
  const values: Record<string, unknown> = {};
  for (const [name, field] of Object.entries(systemModule(kind).spec.fields)) {
    if ("default" in field && field.default !== undefined) continue;
    if (field.type === "number")
      values[name] = Math.ceil(Math.min(field.max, Math.max(field.min, (field.min + field.max) / 3)));
    if (field.type === "choice") values[name] = field.options[0];
    if (field.type === "flag") values[name] = true;
    if (field.type === "date") values[name] = "2025-01-01";
  }
  return values;
}
