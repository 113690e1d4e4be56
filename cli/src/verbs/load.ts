import {
  checkLoad,
  type LoadAgainstLimit,
  type LoadChangeStep,
  type LoadInput,
  type LoadLine,
  type LoadResult,
  loadInputSchema,
  parseWith,
} from "@setfair/engine";
import { checkedVehicle, type Room, roomVerb } from "../room-verb.ts";
import { loadOutputSchema } from "../schemas/load.ts";
import { writeTable } from "../table.ts";
import { WORDS } from "../words.ts";

export const loadRoom: Room<LoadResult> = {
  input: loadInputSchema,
  output: loadOutputSchema,
  answer: (input) => {
    const given: LoadInput = parseWith(loadInputSchema, input);
    return checkLoad({ ...given, vehicle: checkedVehicle(given.vehicle) });
  },
  table: loadTable,
};
export const loadVerb = roomVerb(loadRoom);

function loadTable(load: LoadResult): string {
  return [
    linesTable(load.lines),
    "",
    limitsTable(load),
    "",
    WORDS.t(load.legal ? "cli.load.legal" : "cli.load.over"),
    ...(load.needsWeighbridge ? [WORDS.t("cli.load.weighbridge")] : []),
    ...changeLines(load.leastChange),
    ...offerLines(load),
  ].join("\n");
}

function lineName({ kind, name }: LoadLine): string {
  const label = WORDS.say(`cli.load.kind.${kind}`);
  if (kind === "fitted" && WORDS.has(name)) return `${label}: ${WORDS.t(name)}`;
  return kind === "option" || kind === "item" || kind === "traveller" ? `${label}: ${name}` : label;
}

function linesTable(lines: readonly LoadLine[]): string {
  return writeTable(
    (["thing", "mass", "front", "rear"] as const).map((name) => WORDS.t(`cli.load.${name}`)),
    lines.map((line) => [
      lineName(line),
      ...[line.mass, line.front, line.rear].map((figure) => WORDS.figureText(figure)),
    ]),
    { right: [1, 2, 3] },
  );
}

function limitsTable({ total, front, rear, tyres }: LoadResult): string {
  const rows: (readonly [name: string, against: LoadAgainstLimit])[] = [
    [WORDS.t("cli.load.total"), total],
    [WORDS.t("cli.load.frontAxle"), front],
    [WORDS.t("cli.load.rearAxle"), rear],
    ...(tyres === null
      ? []
      : ([
          [WORDS.t("cli.load.frontTyres"), tyres.front],
          [WORDS.t("cli.load.rearTyres"), tyres.rear],
        ] as const)),
  ];
  return writeTable(
    (["thing", "mass", "limit", "margin", "chanceOver"] as const).map((name) => WORDS.t(`cli.load.${name}`)),
    rows.map(([name, { load, limit, margin, chanceOver }]) => [
      name,
      ...[load, limit, margin, chanceOver].map((figure) => WORDS.figureText(figure)),
    ]),
    { right: [1, 2, 3, 4] },
  );
}

function changeLines({ outcome, steps }: LoadResult["leastChange"]): readonly string[] {
  if (outcome === "notNeeded") return [];
  if (outcome === "none") return [WORDS.t("cli.load.changeNone")];
  return [WORDS.t("cli.load.changeFound"), ...steps.map((step) => `  – ${stepText(step)}`)];
}

function offerLines({ counterOffer }: LoadResult): readonly string[] {
  if (counterOffer === null) return [];
  const payload = WORDS.figureText(counterOffer.payloadNeeded);
  return [WORDS.t("cli.load.counterOffer", { payload, vehicles: counterOffer.vehiclesLikeThis.value })];
}

function stepText(step: LoadChangeStep): string {
  const { kind, ...facts } = step;
  return WORDS.say(`cli.load.${kind}`, facts);
}
