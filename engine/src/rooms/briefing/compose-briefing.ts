import { figure } from "../../base/figure.ts";
import type { Finding, RoomAnswer } from "../../base/finding.ts";
import { briefingRiskPence } from "../../formulas/briefing.ts";
import { MOMENTS } from "../../systems/contract.ts";
import { makeFinding } from "../make-finding.ts";
import { type ChosenCard, chooseCards } from "./choose-cards.ts";
import { fillSlot } from "./fill-slot.ts";
import type { Briefing, BriefingInput, CardInOrder, CardReason } from "./types.ts";

/** Share of the risk left in a hirer's not knowing: common practice, no source. */
const NOT_YET_KNOWN = { firstTime: 1, hasHiredBefore: 0.5, knowsTheCard: 0.1 } as const;

/**
 * The briefing of this vehicle for this hire: what is shown in the slot, and what is sent as reading. Cards that
 * must be shown always are; the rest of the slot goes to those whose showing takes away the most risk.
 * @throws BadInput where a fitted system is not valid
 */
export function composeBriefing(input: BriefingInput): RoomAnswer<Briefing> {
  const cards = chooseCards(input.vehicle, input.situation).map((chosen) => weighCard(chosen, input));
  const must = cards.filter(({ card }) => card.must);
  const others = cards.filter(({ card }) => !card.must).sort(byValuePerMinute);
  const mustMinutes = totalMinutes(must);
  const fits = new Set(
    fillSlot(
      others.map(({ risk, minutes }) => ({ pence: risk.value, minutes: minutes.value })),
      input.slotMinutes - mustMinutes,
    ),
  );
  const shown = others.filter((_, index) => fits.has(index));
  const reading = others.filter((_, index) => !fits.has(index));
  const demonstrate = [...must.map(because("must")), ...shown.map(because("worthTheTime"))].sort(byMoment);
  return {
    result: {
      demonstrate,
      reading: reading.map((card) => because(whyReading(card, input))(card)).sort(byRisk),
      minutes: figure(
        totalMinutes(demonstrate),
        "min",
        "-",
        { cards: demonstrate.length, slotMinutes: input.slotMinutes },
        "default",
        "practice",
      ),
    },
    findings:
      mustMinutes > input.slotMinutes ? [slotTooShort(mustMinutes, must.length, input.slotMinutes)] : [],
  };
}

function weighCard(chosen: ChosenCard, { situation, known }: BriefingInput): CardInOrder {
  const { id, chance, costPence, minutes } = chosen.card;
  const notYetKnown = known?.includes(id)
    ? NOT_YET_KNOWN.knowsTheCard
    : situation.firstTime
      ? NOT_YET_KNOWN.firstTime
      : NOT_YET_KNOWN.hasHiredBefore;
  const pence = briefingRiskPence(chance, costPence, notYetKnown);
  return {
    ...chosen,
    risk: figure(pence, "pence", "briefing.risk", { chance, costPence, notYetKnown }, "default", "practice"),
    minutes: figure(minutes, "min", "-", {}, "default", "practice"),
    why: "worthTheTime",
  };
}

function because(why: CardReason): (card: CardInOrder) => CardInOrder {
  return (card) => ({ ...card, why });
}

function whyReading({ card }: CardInOrder, { known }: BriefingInput): CardReason {
  return known?.includes(card.id) ? "alreadyKnown" : "noTimeLeft";
}

function totalMinutes(cards: readonly CardInOrder[]): number {
  return cards.reduce((sum, { minutes }) => sum + minutes.value, 0);
}

function byRisk(a: CardInOrder, b: CardInOrder): number {
  return b.risk.value - a.risk.value || compareIds(a, b);
}

function byValuePerMinute(a: CardInOrder, b: CardInOrder): number {
  return b.risk.value / b.minutes.value - a.risk.value / a.minutes.value || compareIds(a, b);
}

function byMoment(a: CardInOrder, b: CardInOrder): number {
  const moments = MOMENTS.indexOf(a.card.moment) - MOMENTS.indexOf(b.card.moment);
  return moments || Number(b.card.must) - Number(a.card.must) || byRisk(a, b);
}

function compareIds(a: CardInOrder, b: CardInOrder): number {
  return a.card.id < b.card.id ? -1 : 1;
}

function slotTooShort(mustMinutes: number, cards: number, slotMinutes: number): Finding {
  const needed = figure(mustMinutes, "min", "-", { cards }, "default", "practice");
  return makeFinding("signatures", "briefing.slotTooShort", "condition", "safety", {
    facts: { needed, slot: figure(slotMinutes, "min", "-", {}, "declared"), cards },
    sources: ["practice"],
    mends: [{ code: "briefing.longerSlot", facts: { needed } }],
  });
}
