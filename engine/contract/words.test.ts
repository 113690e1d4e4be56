import { describe, expect, it } from "vitest";
import { vehicleFacts } from "../src/rooms/briefing/choose-cards.ts";
import { applies } from "../src/systems/contract.ts";
import { SYSTEM_KINDS, type SystemKind, systemModule } from "../src/systems/registry.ts";
import { SAMPLE_SITUATIONS, sampleSpecs } from "./arbitrary.ts";
import { argumentsOf, TEXT_FILES, TEXTS } from "./words.ts";

const wholeVehicle = Object.keys(
  vehicleFacts({ lengthM: 6, widthM: 2, heightM: 3, wheelbaseM: 4, rearOverhangM: 1 }),
);

interface Said {
  readonly mentions: readonly string[];
  readonly facts: readonly string[];
}

/** Every text that a module can ask for, with what it may speak of. */
function textsOf(kind: SystemKind): Map<string, Said> {
  const said = new Map<string, Said>();
  const say = (id: string, mentions: readonly string[] = [], facts: readonly string[] = []) =>
    said.set(id, { mentions, facts });
  const { spec: parts, briefing, checks, faults } = systemModule(kind);
  say(`thing.${kind}`);
  for (const spec of sampleSpecs(kind)) {
    for (const { name } of [...parts.masses(spec), ...parts.parts(spec)]) say(name);
    if (applies(checks)) for (const { id } of checks.checks(spec)) say(`check.${id}`);
    if (applies(faults))
      for (const symptom of faults.symptoms(spec)) {
        say(`symptom.${symptom.id}`);
        for (const { id, mentions } of symptom.causes) say(`cause.${id}`, mentions);
        for (const { id, mentions } of symptom.checks) say(`faultCheck.${id}`, mentions);
      }
    if (applies(briefing))
      for (const situation of SAMPLE_SITUATIONS)
        for (const card of briefing.cards(spec, situation)) {
          const endings = [
            "title",
            "do",
            ...(card.hasCaution ? ["caution"] : []),
            ...(card.hasQuestion ? ["ask", "answer"] : []),
          ];
          const facts = [...Object.keys(card.facts), ...wholeVehicle];
          for (const ending of endings) say(`card.${card.id}.${ending}`, card.mentions, facts);
        }
  }
  return said;
}

describe.each(SYSTEM_KINDS)("the words of %s", (kind) => {
  const said = textsOf(kind);
  const file = TEXT_FILES.get(kind) ?? {};

  it("are all written", () => {
    expect([...said.keys()].filter((id) => !TEXTS.has(id))).toEqual([]);
  });

  it("are all used", () => {
    expect(Object.keys(file).filter((id) => !said.has(id))).toEqual([]);
  });

  it("speak of other systems only through tokens that are declared, and of figures that are given", () => {
    const stray = [...said].flatMap(([id, { mentions, facts }]) =>
      argumentsOf(TEXTS.get(id) ?? "")
        .filter(
          (name) => !(name.startsWith("thing_") ? mentions.includes(name.slice(6)) : facts.includes(name)),
        )
        .map((name) => `${id}: {${name}}`),
    );
    expect(stray).toEqual([]);
  });

  it("declare no mention that no text makes", () => {
    const { briefing } = systemModule(kind);
    if (!applies(briefing)) return;
    for (const spec of sampleSpecs(kind, 60))
      for (const situation of SAMPLE_SITUATIONS)
        for (const card of briefing.cards(spec, situation)) {
          const made = ["title", "do", "caution", "ask", "answer"].flatMap((ending) =>
            argumentsOf(TEXTS.get(`card.${card.id}.${ending}`) ?? ""),
          );
          for (const mention of card.mentions) expect(made, card.id).toContain(`thing_${mention}`);
        }
  });
});

describe("the words of all systems", () => {
  const texts = [...TEXTS];
  const spoken = texts.filter(([id]) => id.endsWith(".do") || id.startsWith("faultCheck."));

  it("never say that a thing is safe", () => {
    expect(texts.filter(([, text]) => /\bsafe(ly|ty)?\b/i.test(text))).toEqual([]);
  });

  it("come in short sentences", () => {
    const long = spoken.filter(([, text]) =>
      plain(text)
        .split(/[.:?]\s/)
        .some((sentence) => words(sentence).length > 26),
    );
    expect(long.map(([id]) => id)).toEqual([]);
  });
});

/** The text as it is heard: the first branch of a select, the name of a thing. */
function plain(text: string): string {
  return text
    .replace(/\{thing_(\w+)\}/g, (_, kind) => TEXTS.get(`thing.${kind}`) ?? "")
    .replace(/\{\w+, (?:select|plural),(?: =0 \{[^{}]*\})?\s*\w+ \{([^{}]*)\}[^{}]*(?:\{[^{}]*\})?\}/g, "$1")
    .replace(/\{\w+(?:, number)?\}/g, "nine");
}

function words(text: string): readonly string[] {
  return text.match(/[A-Za-z']+/g) ?? [];
}
