import { figure } from "../../base/figure.ts";
import type { Finding } from "../../base/finding.ts";
import { isRuleFor } from "../../rules/rule-applies.ts";
import { ruleAt } from "../../rules/rule-at.ts";
import { specsOf } from "../../vehicle/specs-of.ts";
import { makeFinding } from "../make-finding.ts";
import { caseFacts } from "./case-facts.ts";
import { childFindings } from "./child-seats.ts";
import type { CheckSeats, SeatsInput } from "./types.ts";

/** common practice, no source: most dogs where the vehicle takes pets and the depot says nothing */
const USUAL_DOGS = 2;

/**
 * Belts against travellers (law), berths against sleepers, a restraint for each child who must have one, pets.
 * A vehicle whose seats are not described is unchecked.
 */
export const checkSeats: CheckSeats = (input) => {
  const seats = specsOf(input.vehicle, "seatsBelts");
  const count = (values: readonly number[]) =>
    figure(
      values.reduce((total, value) => total + value, 0),
      "count",
      "-",
      { vehicle: input.vehicle.id },
      "declared",
    );
  const belts = count(seats.map((each) => each.beltedSeats));
  const berths = count(seats.map((each) => each.berths));
  const children = childFindings(input);
  const found =
    seats.length === 0
      ? [makeFinding("seats", "seats.notDescribed", "unchecked", "law", { about: input.vehicle.id })]
      : [
          ...places(input, belts.value, berths.value),
          ...pets(
            input,
            seats.some((each) => each.petsAllowed),
          ),
        ];
  return {
    result: { belts, berths, childRestraints: children.restrained },
    findings: [...found, ...children.findings],
  };
};

/** Law where the vehicle was registered under it; an older one is held to it for safety, which nobody may pass either. */
function beltBasis({ vehicle, today, days }: SeatsInput): Finding["basis"] {
  const rule = ruleAt("seats.gb.beltPerTraveller", days?.first ?? today);
  return rule !== undefined && isRuleFor(rule, caseFacts(vehicle)) ? "law" : "safety";
}

function places(input: SeatsInput, belts: number, berths: number): Finding[] {
  const { party } = input;
  const travellers = party.travellers.length;
  const sleepers = party.sleepers ?? travellers;
  const found: Finding[] = [];
  if (travellers > belts) {
    const facts = { travellers, belts, missing: travellers - belts };
    const mends = ["seats.otherVehicle", "seats.secondVehicle"];
    found.push(
      makeFinding("seats", "seats.tooFewBelts", "refuse", beltBasis(input), {
        facts,
        sources: ["seats.gb.beltPerTraveller"],
        mends,
      }),
    );
  }
  if (sleepers > berths) {
    const mends = ["seats.otherVehicle", "seats.sleepOutside"];
    found.push(
      makeFinding("seats", "seats.tooFewBerths", "refuse", "policy", { facts: { sleepers, berths }, mends }),
    );
  }
  return found;
}

function pets({ party, petPolicy }: SeatsInput, isAllowed: boolean): Finding[] {
  const max = isAllowed ? (petPolicy?.maxDogs ?? USUAL_DOGS) : 0;
  if (party.dogs <= max) return [];
  const code = max === 0 ? "seats.noPets" : "seats.tooManyDogs";
  return [
    makeFinding("seats", code, "refuse", "policy", {
      facts: { dogs: party.dogs, max },
      mends: ["seats.petVehicle"],
    }),
  ];
}
