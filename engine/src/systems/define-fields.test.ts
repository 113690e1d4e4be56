import { describe, expect, it } from "vitest";
import { BadInput } from "../base/bad-input.ts";
import { parseSpec, type SpecOf, SYSTEM_KINDS } from "./registry.ts";

const battery = { chemistry: "agm", ratedAh: 95 };

describe("the spec of a fitted system", () => {
  it("takes its defaults from the fields", () => {
    const spec: SpecOf<"leisureBattery"> = parseSpec("leisureBattery", battery);
    const chemistry: "agm" | "gel" | "flooded" | "lfp" = spec.chemistry;
    expect(chemistry).toBe("agm");
    expect(spec).toMatchObject({ ratedAh: 95, ratedHours: 20, usableShare: 0.5, isolator: true });
  });

  it.each([
    [{ ...battery, ratedAh: Number.NaN }, "systems.2.spec.ratedAh"],
    [{ ...battery, ratedAh: -95 }, "systems.2.spec.ratedAh"],
    [{ ...battery, ratedAh: Number.POSITIVE_INFINITY }, "systems.2.spec.ratedAh"],
    [{ chemistry: "agm" }, "systems.2.spec.ratedAh"],
    [{ ...battery, chemistry: "lead" }, "systems.2.spec.chemistry"],
    [{ ...battery, massKg: "27" }, "systems.2.spec.massKg"],
  ])("refuses %j and names the field", (spec, path) => {
    expect(() => parseSpec("leisureBattery", spec, "systems.2")).toThrow(BadInput);
    expect(() => parseSpec("leisureBattery", spec, "systems.2")).toThrow(path);
  });

  it("refuses a key that it does not know", () => {
    expect(() => parseSpec("leisureBattery", { ...battery, ratedAH: 95 }, "systems.2")).toThrow("ratedAH");
  });

  it("refuses a whole number with a fraction", () => {
    expect(() => parseSpec("seatsBelts", { beltedSeats: 2.5, berths: 2 })).toThrow("spec.beltedSeats");
  });

  it("refuses a kind that is not registered and lists those that are", () => {
    expect(() => parseSpec("hovercraft", {}, "systems.0")).toThrow(
      `systems.0.kind: expected one of ${SYSTEM_KINDS[0]}`,
    );
  });
});
