import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { checkPlan } from "./check-plan.ts";
import { parseAllocation } from "./parse-allocation.ts";
import { proposeAllocation } from "./propose-allocation.ts";

interface Row {
  readonly id: string;
  readonly quantity: string;
  readonly source: string;
  readonly grade: string;
  readonly objective: string;
  readonly vehicles: number;
  readonly intervals: readonly { readonly from: number; readonly to: number; readonly value: number }[];
  readonly expected: {
    readonly seated: number;
    readonly vehiclesUsed?: number;
    readonly lowerBound?: number;
    readonly value?: number;
    readonly upperBound?: number;
  };
}
const { rows } = JSON.parse(
  readFileSync(new URL("../../../published/planners/allocation.json", import.meta.url), "utf8"),
) as { readonly rows: readonly Row[] };

const at = (hour: number) => `2026-05-09T${String(hour).padStart(2, "0")}:00Z`;

/** Rooms are vehicles, intervals are hires. */
function given({ objective, vehicles, intervals }: Row) {
  const ids = Array.from({ length: vehicles }, (_, k) => `v${k}`);
  return parseAllocation({
    objective,
    turnaroundMinutes: 0,
    vehicles: ids.map((id) => ({ id })),
    hires: intervals.map(({ from, to, value }, k) => ({
      id: `h${k}`,
      from: at(from),
      to: at(to),
      vehicles: ids,
      value,
    })),
  });
}

describe("published problems of seating intervals", () => {
  it("are all here", () => expect(rows.map(({ id }) => id)).toEqual(["Q-01", "Q-02", "Q-04"]));

  it.each(rows)("$id $quantity: the published optimum, proven ($source)", (row) => {
    const input = given(row);
    const { result } = proposeAllocation(input);
    expect(checkPlan(input, result)).toEqual([]);
    const { seated, ...figures } = row.expected;
    expect(result).toMatchObject({ ...figures, proven: true });
    expect(result.seated).toHaveLength(seated);
  });
});
