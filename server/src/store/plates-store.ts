import { fromText, toDateText } from "./codec.ts";
import type { Door } from "./door.ts";
import type { Store } from "./types.ts";

/** A registration number as it is compared: without spaces and whatever its case. */
export const foldPlate = (plate: string): string => plate.replace(/[^\p{L}\p{N}]/gu, "").toUpperCase();

function plateOf(document: string): string {
  const { description } = fromText(document);
  if (typeof description !== "object" || description === null || !("registration" in description)) return "";
  return typeof description.registration === "string" ? foldPlate(description.registration) : "";
}

/** Holds registration numbers apart: one vehicle of a depot each, from a day on. */
export function platesStore(door: Door): Store["plates"] {
  return {
    async holder({ registration, exceptVehicleId, from }) {
      await door.lock("registrations");
      const rows = await door
        .from("vehicle_version")
        .select(["of_id", "valid_from", "document"])
        .where("of_id", "!=", exceptVehicleId)
        .orderBy("of_id")
        .orderBy("valid_from")
        .orderBy("seq")
        .execute();
      const day = toDateText(from, "from");
      const wanted = foldPlate(registration);
      // what holds on that day, and whatever comes after it
      const inForce = new Map(
        rows.filter(({ valid_from }) => valid_from <= day).map((row) => [row.of_id, row]),
      );
      const later = rows.filter(({ valid_from }) => valid_from > day);
      return (
        [...inForce.values(), ...later].find(({ document }) => plateOf(document) === wanted)?.of_id ?? null
      );
    },
  };
}
