import { figure } from "../../base/figure.ts";
import type { Finding } from "../../base/finding.ts";
import type { IsoDate } from "../../base/time.ts";
import { addDays, anniversary } from "../../base/years.ts";
import { ruleFigure } from "../../rules/rule-at.ts";
import type { VehicleDescription } from "../../vehicle/description.ts";
import { makeFinding } from "../make-finding.ts";
import { dutiesOf, dutyOf } from "./duties.ts";
import type { CheckUpkeep, DueEntry, DueLine, Duty, UpkeepInput } from "./types.ts";

/**
 * Each duty must be good through the last day of the hire, or to the distance at its end. What the law wants
 * nobody overrides; everything else is the depot's policy, for a named person with a reason. What is required
 * and nobody entered is unchecked. A vehicle needs no MOT before its third birthday.
 */
export const checkUpkeep: CheckUpkeep = (input) => {
  const last = input.to.slice(0, 10);
  const listed = input.book.map((entry) => lineOf(entry, input, last));
  const missing = dutiesOf(input.vehicle, last)
    .filter((duty) => duty.status === "law" || duty.required === true)
    .filter(({ kind }) => listed.every((line) => line.kind !== kind))
    .filter(({ kind }) => !(kind === "mot" && isTooYoung(input.vehicle, last)))
    .map(
      ({ kind, status, source }): DueLine => ({
        kind,
        status,
        source,
        dueOn: null,
        dueKm: null,
        state: "missing",
      }),
    );
  const due = [...listed, ...missing];
  const endKm = input.odometer === undefined ? null : figure(input.odometer.endKm, "km", "-", {}, "default");
  return { result: { due, endKm }, findings: due.flatMap((line) => findingOf(line, input, last)) };
};

function isTooYoung(vehicle: VehicleDescription, last: IsoDate): boolean {
  return last < anniversary(vehicle.firstRegistered, ruleFigure("due.gb.mot.firstAfterYears", last).value);
}

function lineOf(entry: DueEntry, input: UpkeepInput, last: IsoDate): DueLine {
  const duty = dutyOf(entry.kind);
  const status = duty?.status ?? "policy";
  return { ...entry, status, source: duty?.source ?? "practice", state: stateOf(entry, duty, input, last) };
}

function stateOf(
  { dueOn, dueKm }: DueEntry,
  duty: Duty | undefined,
  { today, from, odometer, marginDays = 0 }: UpkeepInput,
  last: IsoDate,
): DueLine["state"] {
  if (duty?.routine === true && from.slice(0, 10) > today) return "inDate";
  if (duty?.routine === true && dueOn !== null) return dueOn < today ? "lapsed" : "inDate";
  if (dueOn !== null && dueOn < last) return dueOn < today ? "lapsed" : "lapses";
  if (dueKm !== null && odometer !== undefined && odometer.endKm > dueKm) {
    return odometer.readKm > dueKm ? "lapsed" : "lapses";
  }
  if (dueKm !== null && odometer === undefined) return "unknown";
  const isShort = duty?.status === "law" && dueOn !== null && dueOn < addDays(last, marginDays);
  return isShort ? "lapsesInMargin" : "inDate";
}

function findingOf(line: DueLine, input: UpkeepInput, last: IsoDate): Finding[] {
  const { kind, state, status, dueOn, dueKm } = line;
  if (state === "inDate") return [];
  const isLaw = status === "law";
  const basis = isLaw ? "law" : "policy";
  const sources = isLaw ? [`due.gb.${kind}.required`] : ["practice"];
  if (state === "missing") {
    const more = { about: kind, sources, facts: { kind }, mends: ["due.enter"] };
    return [makeFinding("dueDates", "due.missing", "unchecked", basis, more)];
  }
  if (state === "unknown") {
    const more = { about: kind, sources: ["practice"], facts: { kind }, mends: ["due.readOdometer"] };
    return [makeFinding("dueDates", "due.noOdometer", "unchecked", "policy", more)];
  }
  const mends = ["due.renew"];
  if (state === "lapsesInMargin") {
    const facts = { kind, dueOn: dueOn ?? "", last, days: input.marginDays ?? 0 };
    const more = { about: kind, sources: ["practice"], facts, mends };
    return [makeFinding("dueDates", "due.margin", "refuse", "policy", more)];
  }
  if (dueOn !== null && dueOn < last) {
    const code = state === "lapsed" ? "due.lapsed" : "due.lapses";
    return [
      makeFinding("dueDates", code, "refuse", basis, {
        about: kind,
        sources,
        facts: { kind, dueOn, last },
        mends,
      }),
    ];
  }
  const km = (value: number) => figure(value, "km", "-", {}, "declared");
  const facts = { kind, dueKm: km(dueKm ?? 0), endKm: km(input.odometer?.endKm ?? 0) };
  return [makeFinding("dueDates", "due.distance", "refuse", basis, { about: kind, sources, facts, mends })];
}
