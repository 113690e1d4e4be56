import { SYSTEMS, systemGroups } from "@setfair/engine";
import { expect, test } from "vitest";
import { createWords } from "./index.ts";

const words = createWords("en-GB");
const hasOne = (ids: readonly string[]): boolean => ids.some((id) => words.has(id));

test("every field of a fitted system has a name in the vehicle editor", () => {
  const lacking = SYSTEMS.flatMap(({ kind, spec }) =>
    Object.keys(spec.fields)
      .filter((name) => !hasOne([`field.${kind}.${name}`, `field.${name}`]))
      .map((name) => `field.${kind}.${name}`),
  );
  expect(lacking).toEqual([]);
});

test("every choice of a fitted system has a name in the vehicle editor", () => {
  const lacking = SYSTEMS.flatMap(({ kind, spec }) =>
    Object.entries(spec.fields).flatMap(([name, field]) =>
      field.type === "choice"
        ? field.options
            .map((option) => [`option.${kind}.${name}.${option}`, `option.${option}`])
            .filter((ids) => !hasOne(ids))
            .map(([id]) => id)
        : [],
    ),
  );
  expect(lacking).toEqual([]);
});

test("every group of the vehicle editor has a name", () => {
  expect(systemGroups().filter(({ id }) => !words.has(`group.${id}`))).toEqual([]);
});
