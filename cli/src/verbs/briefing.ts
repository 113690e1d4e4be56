import {
  type Briefing,
  type BriefingInput,
  briefingInputSchema,
  type CardInOrder,
  composeBriefing,
  parseWith,
} from "@setfair/engine";
import { checkedVehicle, type Room, roomVerb } from "../room-verb.ts";
import { briefingOutputSchema } from "../schemas/briefing.ts";
import { writeTable } from "../table.ts";
import { WORDS } from "../words.ts";

export const briefingRoom: Room<Briefing> = {
  input: briefingInputSchema,
  output: briefingOutputSchema,
  answer: (input) => {
    const given = parseWith<BriefingInput>(briefingInputSchema, input);
    return composeBriefing({ ...given, vehicle: checkedVehicle(given.vehicle) });
  },
  table: ({ demonstrate, reading, minutes }) =>
    [
      WORDS.t("cli.briefing.show", { minutes }),
      cardsTable(demonstrate),
      "",
      WORDS.t("cli.briefing.reading"),
      cardsTable(reading),
    ].join("\n"),
};
export const briefingVerb = roomVerb(briefingRoom);

function title({ card }: CardInOrder): string {
  const id = `card.${card.id}.title`;
  return WORDS.has(id) ? WORDS.say(id, card.facts) : card.id;
}

function cardsTable(cards: readonly CardInOrder[]): string {
  return writeTable(
    (["moment", "card", "minutes", "risk", "why"] as const).map((name) => WORDS.t(`cli.briefing.${name}`)),
    cards.map((each) => [
      WORDS.say(`moment.${each.card.moment}`),
      title(each),
      WORDS.figureText(each.minutes),
      WORDS.figureText(each.risk),
      WORDS.say(`briefing.why.${each.why}`),
    ]),
    { right: [2, 3] },
  );
}
