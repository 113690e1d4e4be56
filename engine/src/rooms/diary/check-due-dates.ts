import type { Finding } from "../../base/finding.ts";
import type { IsoDate } from "../../base/time.ts";
import { anniversary } from "../../base/years.ts";
import { ruleFigure } from "../../rules/rule-at.ts";
import type { VehicleDescription } from "../../vehicle/description.ts";
import { specsOf } from "../../vehicle/specs-of.ts";
import { makeFinding } from "../make-finding.ts";
import type { CheckDueDates, DueDate, DueKind } from "./types.ts";

/** due by law, overridden by nobody; everything else is the depot's policy */
const LAW: readonly DueKind[] = ["mot", "tax", "insurance"];

type Judged = DueDate & { readonly state: "inDate" | "lapses" | "missing" };

/**
 * Each duty must be good through the last day of the hire. MOT, tax and insurance are law; what the law wants
 * and nobody entered is unchecked. A vehicle needs no MOT before its third birthday.
 */
export const checkDueDates: CheckDueDates = (input) => {
  const last = input.to.slice(0, 10);
  const listed = input.dueDates.map(
    (due): Judged => ({ ...due, state: due.dueOn >= last ? "inDate" : "lapses" }),
  );
  const wanted: readonly DueKind[] = [
    ...LAW,
    ...(specsOf(input.vehicle, "lpg").length > 0 ? (["lpgCheck"] as const) : []),
  ];
  const missing = wanted
    .filter(
      (kind) =>
        listed.every((due) => due.kind !== kind) && !(kind === "mot" && isTooYoung(input.vehicle, last)),
    )
    .map((kind): Judged => ({ kind, dueOn: input.today, state: "missing" }));
  const due = [...listed, ...missing];
  return { result: { due }, findings: due.flatMap((each) => findingOf(each, last, input.today)) };
};

function isTooYoung(vehicle: VehicleDescription, last: IsoDate): boolean {
  return last < anniversary(vehicle.firstRegistered, ruleFigure("due.gb.mot.firstAfterYears", last).value);
}

function findingOf({ kind, dueOn, state }: Judged, last: IsoDate, today: IsoDate): Finding[] {
  if (state === "inDate") return [];
  const isLaw = LAW.includes(kind);
  const more = {
    about: kind,
    sources: isLaw ? [`due.gb.${kind}.required`] : ["practice"],
    mends: ["due.renew"],
  };
  const basis = isLaw ? "law" : "policy";
  if (state === "missing")
    return [
      makeFinding("dueDates", "due.missing", "unchecked", basis, {
        ...more,
        mends: ["due.enter"],
        facts: { kind },
      }),
    ];
  const code = dueOn < today ? "due.lapsed" : "due.lapses";
  return [makeFinding("dueDates", code, "refuse", basis, { ...more, facts: { kind, dueOn, last } })];
}
