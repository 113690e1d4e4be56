import { figure } from "../../base/figure.ts";
import type { Finding } from "../../base/finding.ts";
import { ruleFigure } from "../../rules/rule-at.ts";
import { specsOf } from "../../vehicle/specs-of.ts";
import { makeFinding } from "../make-finding.ts";
import type { Traveller } from "../situation.ts";
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

function places({ party }: SeatsInput, belts: number, berths: number): Finding[] {
  const travellers = party.travellers.length;
  const sleepers = party.sleepers ?? travellers;
  const found: Finding[] = [];
  if (travellers > belts) {
    const facts = { travellers, belts, missing: travellers - belts };
    const mends = ["seats.otherVehicle", "seats.secondVehicle"];
    found.push(
      makeFinding("seats", "seats.tooFewBelts", "refuse", "law", {
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

function childFindings({ party, today }: SeatsInput): { findings: Finding[]; restrained: string[] } {
  const belowCm = ruleFigure("seats.gb.childRestraint.belowCm", today);
  const belowYears = ruleFigure("seats.gb.childRestraint.belowYears", today);
  const needs = (child: Traveller): boolean | null => {
    if (child.ageYears !== undefined && child.ageYears >= belowYears.value) return false;
    if (child.heightCm !== undefined && child.heightCm >= belowCm.value) return false;
    return child.ageYears === undefined || child.heightCm === undefined ? null : true;
  };
  const children = party.travellers.filter(({ kind }) => kind === "child");
  const restrained = children.filter((child) => needs(child) === true).map(({ id }) => id);
  const unknown = children.filter((child) => needs(child) === null);
  const sources = [belowCm.source!, belowYears.source!];
  const findings = unknown.map((child) =>
    makeFinding("seats", "seats.childUnknown", "unchecked", "law", {
      about: child.id,
      facts: { child: child.name ?? child.id, belowCm, belowYears: belowYears.value },
      sources,
      mends: ["seats.askAgeAndHeight"],
    }),
  );
  if (restrained.length > 0) {
    const facts = { count: restrained.length, belowCm, belowYears: belowYears.value };
    findings.push(
      makeFinding("seats", "seats.childRestraint", "condition", "law", {
        facts,
        sources,
        mends: ["seats.bringRestraint"],
      }),
    );
  }
  return { findings, restrained };
}
