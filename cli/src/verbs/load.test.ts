import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { runCommand } from "../run-command.ts";
import { testIo } from "../test-io.ts";

it("the table of setfair load names each thing, person and option; what everybody has it calls by its kind", async () => {
  const input = readFileSync(new URL("../../../examples/load-family.input.json", import.meta.url), "utf8");
  const { io, written } = testIo({ "load.json": input });
  expect(await runCommand(["load", "load.json"], io)).toBe(1);
  const first = written.out.split("\n").map((line) => line.split(/ {2,}/)[0]);
  expect(first.slice(2, 19)).toEqual([
    "Mass in running order",
    "Option: Awning with its fittings",
    "Driver beyond the mass already counted",
    "Traveller: Second adult",
    "Traveller: Child of 13",
    "Traveller: Child of 11",
    "Traveller: Child of 9",
    "Traveller: Child of 7",
    "Fuel",
    "Fresh water",
    "Gas cylinders",
    "Item: Bicycle 1",
    "Item: Bicycle 2",
    "Item: Bicycle 3",
    "Item: Bicycle 4",
    "Item: Rack for four bicycles",
    "Item: Luggage",
  ]);
});
