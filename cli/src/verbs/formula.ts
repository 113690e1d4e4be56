import { BadInput, type FormulaListing, formula, listFormulas } from "@setfair/engine";
import { parseJson, readJson } from "../read-json.ts";
import { writeTable } from "../table.ts";
import type { Verb } from "../verb.ts";
import { WORDS } from "../words.ts";

/** `setfair formula`: the list · `setfair formula <id> '<json>'` (or - for standard input): one line of JSON. */
export const formulaVerb: Verb = {
  options: { json: { type: "boolean" } },
  maxPositionals: 2,
  run: async ({ io, flags, positionals }) => {
    const [id, text] = positionals;
    if (id === undefined) {
      io.out(flags.json === true ? `${JSON.stringify(listFormulas(), null, 2)}\n` : `${listText()}\n`);
      return 0;
    }
    const args = text === undefined ? {} : text === "-" ? await readJson(io, "-") : parseJson(text, id);
    try {
      io.out(`${JSON.stringify(formula(id, args))}\n`);
      return 0;
    } catch (error) {
      const listed = listFormulas().find((each) => each.id === id);
      if (error instanceof BadInput && listed !== undefined) {
        io.err(`${WORDS.t("cli.formula.takes", { id, arguments: argumentText(listed) })}\n`);
      }
      throw error;
    }
  },
};

function listText(): string {
  const head = (["id", "arguments", "unit", "source"] as const).map((column) =>
    WORDS.t(`cli.formula.${column}`),
  );
  return writeTable(
    head,
    listFormulas().map((listed) => [listed.id, argumentText(listed), listed.unit, listed.source]),
  );
}

function argumentText({ args }: FormulaListing): string {
  const required = new Set(args.required ?? []);
  return Object.keys(args.properties ?? {})
    .map((name) => (required.has(name) ? name : `[${name}]`))
    .join(", ");
}
