import * as z from "zod/mini";
import en from "zod/v4/locales/en.js";
import { plainIssue } from "./plain-issue.ts";

// the mini build carries no messages of its own; only English is bundled, and our own words come before it
z.config({ ...en(), customError: plainIssue });

/** What was wrong with an input: the path of the field and what was expected there. */
export interface InputProblem {
  /** e.g. `masses.axleMaxKg.rear`; empty for the whole input */
  readonly path: string;
  readonly expected: string;
}

/** Thrown where an input cannot be used at all; the message names every field. An expected "no" is a Finding instead. */
export class BadInput extends Error {
  readonly problems: readonly InputProblem[];

  constructor(problems: readonly InputProblem[]) {
    super(problems.map(({ path, expected }) => (path === "" ? expected : `${path}: ${expected}`)).join("; "));
    this.name = "BadInput";
    this.problems = problems;
  }
}

/** Parses with a schema; throws {@link BadInput} that names each field, with `under` before every path. */
export function parseWith<T>(schema: z.ZodMiniType<T>, value: unknown, under = ""): T {
  const answer = schema.safeParse(value);
  if (answer.success) return answer.data;
  throw new BadInput(
    answer.error.issues.map((issue) => ({
      path: [under, ...issue.path.map(String)].filter((part) => part !== "").join("."),
      expected: issue.message,
    })),
  );
}
