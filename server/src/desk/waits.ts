import { GATES, type Gate, type GlassReading } from "@setfair/engine";
import type { z } from "zod";
import type { waitSchema } from "../api/schemas/hires.ts";
import { readHireMoney } from "../money/hire-money.ts";
import { openHelp } from "./help.ts";
import { driversOf, type HireData, partOf } from "./hire-data.ts";
import { moneyOfHire } from "./money-of-hire.ts";
import { directionOf, walkFacts, wholeRecords } from "./record-facts.ts";
import { secondLookOf } from "./second-look.ts";

type Wait = z.input<typeof waitSchema>;

const WHOSE: Readonly<Record<Gate, Wait["whose"]>> = {
  seats: "desk",
  licence: "hirer",
  insurance: "insurer",
  masses: "desk",
  diary: "desk",
  dueDates: "yard",
  defects: "yard",
  countries: "desk",
  crossing: "desk",
  season: "desk",
  resources: "desk",
  money: "hirer",
  signatures: "hirer",
};
const wait = (code: string, whose: Wait["whose"], facts: Wait["facts"] = {}): Wait => ({
  code,
  whose,
  facts,
});

/** What the hire waits for now and whose move it is, the next first. */
export function waitsOf(data: HireData, glass: GlassReading): readonly Wait[] {
  switch (data.row.stage) {
    case "enquiry":
      return data.row.vehicleId === null ? [wait("chooseVehicle", "desk")] : [wait("quote", "desk")];
    case "quote":
      return partOf(data, "quote")?.acceptedAt ? [wait("book", "desk")] : [wait("acceptQuote", "hirer")];
    case "booked":
      return beforeKeys(data, glass);
    case "handedOver":
    case "onHire":
      return [
        ...(openHelp(data.records).length > 0 ? [wait("helpAsked", "desk")] : []),
        ...authoriseAgain(data),
        data.nowLocal > data.to ? wait("late", "desk") : wait("onTheRoad", "hirer"),
      ];
    case "returned":
      return afterReturn(data);
    case "settled":
      return afterSettling(data);
    default:
      return [];
  }
}

/** What is held back waits for its answer, by the promised day. */
function afterSettling(data: HireData): readonly Wait[] {
  const settlement = partOf(data, "settlement");
  const result = settlement?.standing ?? settlement?.answer?.result;
  const promised = settlement?.promisedOn ?? null;
  if (settlement?.releasedAt && promised !== null && (result?.depositWithheld.pence ?? 0) > 0)
    return [wait(promised < data.today ? "answerLate" : "answerHeld", "desk", { promisedOn: promised })];
  if (moneyOfHire(data).owed.pence < 0 && settlement?.releasedAt) return [wait("refund", "desk")];
  return settlement?.releasedAt || moneyOfHire(data).depositHeld.pence <= 0
    ? [wait("close", "desk")]
    : [wait("releaseDeposit", "desk")];
}

/** A hold on a card that ends this week, or has ended, before its deposit goes back. */
function authoriseAgain(data: HireData): readonly Wait[] {
  const ending = readHireMoney(data).holds.filter(
    ({ state, daysLeft }) => state !== "stands" && daysLeft < 8,
  );
  const [first] = [...ending].sort((a, b) => a.daysLeft - b.daysLeft);
  return first === undefined ? [] : [wait("authoriseAgain", "desk", { standsTo: first.standsTo })];
}

/** Every gate that is due and holds the keys, and what nobody has brought yet, in the order of the gates. */
function beforeKeys(data: HireData, glass: GlassReading): readonly Wait[] {
  const waits: Wait[] = [];
  if (driversOf(data).length === 0) waits.push(wait("drivers", "hirer"));
  if (partOf(data, "trip") === null) waits.push(wait("trip", "hirer"));
  if (partOf(data, "load") === null) waits.push(wait("load", "desk"));
  if (glass.state === "goesWithConditions" || glass.state === "readyWithNotes" || glass.state === "ready") {
    return waits.length > 0
      ? waits
      : [
          wait(
            walkFacts(data.records, "out").signed ? "keys" : "walkOut",
            walkFacts(data.records, "out").signed ? "desk" : "yard",
          ),
        ];
  }
  const walked = walkFacts(data.records, "out").signed;
  const gates = GATES.flatMap((gate) => {
    const found = glass.gates.find((each) => each.gate === gate);
    const holds =
      found?.isDue === true &&
      (found.state === "refused" || found.state === "referred" || found.state === "notCheckedYet");
    return holds ? [wait(`gate.${gate}`, WHOSE[gate])] : [];
  });
  return [...waits, ...gates, ...(walked ? [] : [wait("walkOut", "yard")])];
}

function afterReturn(data: HireData): readonly Wait[] {
  if (!walkFacts(data.records, "back").finished) return [wait("walkBack", "yard")];
  if (keptOpen(data)) return [wait("secondLook", "yard")];
  return [wait("settle", "desk")];
}

/** Something was too wet or dirty at the return and nobody looked again, while the window is open. */
function keptOpen(data: HireData): boolean {
  const looks = wholeRecords(data.records).filter(
    (record) => record.kind === "look" && directionOf(record) === "back",
  );
  const saw = (wet: boolean) =>
    looks
      .filter(({ content }) => ((content.outcome ?? content.saw) === "tooWetOrDirty") === wet)
      .map(({ content }) => String(content.checkId ?? content.about));
  const seen = new Set(saw(false));
  const secondLooks = [...new Set(saw(true))]
    .filter((checkId) => !seen.has(checkId))
    .map((checkId) => ({ checkId, when: "back" as const }));
  return secondLookOf(data, { secondLooks }).holds;
}
