import {
  type Diagnosis,
  type DiagnosisInput,
  diagnose,
  diagnosisInputSchema,
  parseWith,
} from "@setfair/engine";
import { checkedVehicle, type Room, roomVerb } from "../room-verb.ts";
import { diagnoseOutputSchema } from "../schemas/diagnose.ts";
import { writeTable } from "../table.ts";
import { WORDS } from "../words.ts";

export const diagnoseRoom: Room<Diagnosis | null> = {
  input: diagnosisInputSchema,
  output: diagnoseOutputSchema,
  answer: (input) => {
    const given = parseWith<DiagnosisInput>(diagnosisInputSchema, input);
    return diagnose({ ...given, vehicle: checkedVehicle(given.vehicle) });
  },
  table: (result) => (result === null ? WORDS.t("cli.diagnose.none") : tableOf(result)),
};
export const diagnoseVerb = roomVerb(diagnoseRoom);

const said = (kind: "symptom" | "cause" | "faultCheck", id: string): string => {
  const message = `${kind}.${id}`;
  return WORDS.has(message) ? WORDS.say(message) : id;
};

function tableOf(result: Diagnosis): string {
  const lines = [
    WORDS.t("cli.diagnose.head", {
      symptom: said("symptom", result.symptom),
      outcome: WORDS.say(`diagnosis.outcome.${result.outcome}`),
    }),
    "",
    writeTable(
      [WORDS.t("cli.diagnose.cause"), WORDS.t("cli.diagnose.chance")],
      result.causes.map(({ cause, chance }) => [said("cause", cause), WORDS.figureText(chance)]),
      { right: [1] },
    ),
  ];
  if (result.expectedMinutes !== null) lines.push("", ...planLines(result, result.expectedMinutes));
  if (result.goOnWith !== null)
    lines.push("", WORDS.t("cli.diagnose.goOn", { symptom: said("symptom", result.goOnWith) }));
  if (result.leftForTrained.length > 0)
    lines.push(
      "",
      WORDS.t("cli.diagnose.trained"),
      ...result.leftForTrained.map((id) => `  ${said("faultCheck", id)}`),
    );
  return lines.join("\n");
}

function planLines({ plan }: Diagnosis, minutes: NonNullable<Diagnosis["expectedMinutes"]>) {
  return [
    WORDS.t("cli.diagnose.expected", { minutes }),
    writeTable(
      (["check", "minutes", "finds", "reached"] as const).map((name) => WORDS.t(`cli.diagnose.${name}`)),
      plan.map((each) => [
        said("faultCheck", each.check),
        WORDS.figureText(each.minutes),
        WORDS.figureText(each.finds),
        WORDS.figureText(each.reached),
      ]),
      { right: [1, 2, 3], most: { 0: 44 } },
    ),
  ];
}
