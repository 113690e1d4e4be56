import { readFileSync } from "node:fs";
import { checkInsurance, insurancePolicySchema, type VehicleDescription } from "@setfair/engine";
import { expect, test } from "vitest";
import { firstPolicy } from "./first-policy.ts";

const vehicle = JSON.parse(
  readFileSync(new URL("../../../../examples/pv2.json", import.meta.url), "utf8"),
) as VehicleDescription;

test("the criteria that a new firm begins with accept nobody by themselves", () => {
  const policy = insurancePolicySchema.parse({ ...firstPolicy("2026-07-01", "GB"), id: "to be replaced" });
  const driver = {
    id: "d1",
    name: "Best Possible",
    born: "1970-01-01",
    main: true,
    licence: {
      issuedBy: "GB" as const,
      firstCarEntitlement: "1990-01-01",
      categories: [{ category: "B" as const, from: "1990-01-01", to: "2039-12-31" }],
      endorsements: [],
    },
    faultIncidents3y: 0,
    disqualified3y: false,
  };
  const { result } = checkInsurance({
    drivers: [driver],
    policy,
    vehicle,
    from: "2026-07-03T12:00",
    to: "2026-07-06T10:00",
    countries: ["GB"],
  });
  expect(result?.outcome).not.toBe("accept");
});
