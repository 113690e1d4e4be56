import type * as z from "zod/v4/core";

/** The issue of a schema before it has a message. */
type Issue = z.$ZodRawIssue;

const KINDS: Readonly<Record<string, string>> = {
  string: "a text",
  number: "a number",
  int: "a whole number",
  bigint: "a whole number",
  boolean: "yes or no",
  array: "a list",
  object: "an object with named fields",
  record: "an object with named fields",
  date: "a date",
  null: "nothing",
};
const FORMATS: Readonly<Record<string, string>> = {
  email: "a mail address such as name@example.org",
  date: "a day that exists, as YYYY-MM-DD",
  time: "a time as HH:MM",
  datetime: "a date and time as YYYY-MM-DDTHH:MM:SSZ",
  url: "an address that begins with https://",
  uuid: "an id as it was given",
};

const kindOf = (input: unknown): string => {
  if (input === null) return "nothing";
  if (Array.isArray(input)) return "a list";
  return KINDS[typeof input] ?? `a ${typeof input}`;
};

/** Whole numbers of more than four digits stay readable: 20,000. */
const numberText = (n: unknown): string => (typeof n === "number" ? n.toLocaleString("en-GB") : String(n));

function sizeText(issue: Issue, bound: unknown, side: "least" | "most", inclusive: boolean): string {
  const n = numberText(bound);
  const edge = side === "least" ? "at least" : "at most";
  switch (issue.origin) {
    case "string":
      if (side === "least" && bound === 1) return "something has to stand here";
      return side === "least" ? `at least ${n} characters` : `no more than ${n} characters`;
    case "array":
    case "set":
      return `${edge} ${n} in the list`;
    default:
      if (inclusive) return `${edge} ${n}`;
      return side === "least" ? `more than ${n}` : `less than ${n}`;
  }
}

/**
 * What was expected at a field, in plain words instead of the schema library's own; it stands beside the field on a
 * screen and behind the field's path at the command line. No text of what was given is repeated: it may be personal.
 */
export function plainIssue(issue: Issue): string | undefined {
  switch (issue.code) {
    case "invalid_type": {
      const wanted = KINDS[String(issue.expected)];
      if (issue.input === undefined || issue.input === null)
        return wanted === undefined ? "this is needed" : `this is needed: ${wanted}`;
      if (typeof issue.input === "number" && !Number.isFinite(issue.input)) return "a number";
      return wanted === undefined ? undefined : `${wanted}, not ${kindOf(issue.input)}`;
    }
    case "too_small":
      return sizeText(issue, issue.minimum, "least", issue.inclusive !== false);
    case "too_big":
      return sizeText(issue, issue.maximum, "most", issue.inclusive !== false);
    case "not_multiple_of":
      return `a multiple of ${numberText(issue.divisor)}`;
    case "invalid_format":
      return FORMATS[String(issue.format)] ?? "a text of the form that this field takes";
    case "invalid_value": {
      const values = Array.isArray(issue.values) ? issue.values.map(String) : [];
      return values.length === 1 ? `only ${values[0]}` : `one of: ${values.join(", ")}`;
    }
    case "unrecognized_keys": {
      const keys = Array.isArray(issue.keys) ? issue.keys.map(String) : [];
      return `no field of this name: ${keys.join(", ")}`;
    }
    default:
      return undefined;
  }
}
