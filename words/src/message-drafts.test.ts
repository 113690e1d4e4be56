import { IntlMessageFormat } from "intl-messageformat";
import { expect, test } from "vitest";
import GERMAN from "./de/messages.json" with { type: "json" };
import ENGLISH from "./en/messages.json" with { type: "json" };
import FRENCH from "./fr/messages.json" with { type: "json" };
import { createWords } from "./index.ts";
import { MESSAGE_DRAFTS } from "./message-drafts.ts";

const templates = Object.keys(ENGLISH).filter((id) => /^message\.\w+\.(subject|body)$/.test(id));

type Node = {
  readonly type: number;
  readonly value: string;
  readonly options?: Record<string, { value: Node[] }>;
};
/** Names of the facts that a message asks for, from its parsed form: 0 is plain text. */
function namesIn(text: string): readonly string[] {
  const collect = (nodes: readonly Node[]): string[] =>
    nodes.flatMap(({ type, value, options = {} }) => [
      ...(type === 0 ? [] : [value]),
      ...Object.values(options).flatMap((option) => collect(option.value)),
    ]);
  const ast = new IntlMessageFormat(text, "en-GB").getAst() as unknown as Node[]; // the parser's own types are not exported
  return [...new Set(collect(ast))].sort();
}

test("German and French have every template, with the same facts in it", () => {
  expect(templates).toHaveLength(10);
  for (const other of [GERMAN, FRENCH] as Readonly<Record<string, string>>[]) {
    expect(Object.keys(other).sort()).toEqual([...templates].sort());
    for (const id of templates) {
      expect([id, namesIn(other[id] ?? "")]).toEqual([
        id,
        namesIn((ENGLISH as Record<string, string>)[id] ?? ""),
      ]);
    }
  }
});

test("a draft writes in its own language", () => {
  const { locale, catalogue } = MESSAGE_DRAFTS.de;
  const words = createWords(locale, catalogue);
  expect(words.t("message.dayBefore.subject", { number: "26-0001", days: 1 })).toBe("Morgen: Miete 26-0001");
  expect(words.dateText("2026-07-03T12:15", "fullTime")).toContain("Juli");
});
