import { type Finding, GATES, type Gate } from "../../base/finding.ts";
import { type IsoInstant, Temporal } from "../../base/time.ts";
import leadTimeData from "../../rules/data/gate-lead-times.json" with { type: "json" };
import { mayOverride } from "./may-override.ts";
import type {
  GateOnGlass,
  GateReading,
  GateState,
  GlassInput,
  GlassReading,
  GlassState,
  LeadTimes,
  Override,
} from "./types.ts";

/** Hours before the keys at which each gate falls due: common practice, no source; a depot sets its own. */
export const DEFAULT_LEAD_TIMES: LeadTimes = leadTimeData.hours;
/** What these refuse is renewed or mended in the course of things until they fall due: common practice, no source. */
const IN_COURSE: readonly string[] = leadTimeData.inCourse;

type FindingOnGlass = GateOnGlass["findings"][number];

const GLASS_BY_GATE: Readonly<Record<GateState, GlassState>> = {
  refused: "cannotGo",
  referred: "notYet",
  notCheckedYet: "notYet",
  conditions: "goesWithConditions",
  overridden: "goesWithConditions",
  notes: "readyWithNotes",
  clear: "ready",
  later: "ready",
};
const WORST_FIRST: readonly GlassState[] = [
  "cannotGo",
  "notYet",
  "goesWithConditions",
  "readyWithNotes",
  "ready",
];

/**
 * Answers "may the keys go?": the worst of the gates that are due, computed, never typed. A gate falls due
 * its lead time before the keys; until then it reads `later` and does not darken, but for a refusal that nobody at
 * the depot may let pass and that waiting does not mend (law, safety, cover): what is known is said, so such a gate
 * counts at once. Due and unchecked, or referred: not yet. Throws a RangeError on an instant that is none.
 */
export function readGlass(input: GlassInput): GlassReading {
  const leadTimes = input.leadTimes ?? DEFAULT_LEAD_TIMES;
  const gates = GATES.map((gate) => readGate(gate, input, leadTimes[gate]));
  const open = gates.flatMap(({ findings }) => findings.filter((finding) => finding.override === undefined));
  const state = worstOf(gates);
  return {
    state: input.handedOver === null ? state : "onTheRoad",
    gates,
    conditions: gates
      .filter(({ isDue }) => isDue)
      .flatMap(({ findings }) =>
        findings.filter((f) => f.severity === "condition" || f.override !== undefined),
      ),
    because: gates
      .filter((gate) => gate.isDue && state !== "ready" && GLASS_BY_GATE[gate.state] === state)
      .flatMap(reasonsOf),
    toActOn: input.handedOver === null ? 0 : open.filter(({ severity }) => severity !== "note").length,
    rejectedOverrides: input.overrides.filter((override) => !holds(override, input.gates)),
  };
}

function readGate(gate: Gate, input: GlassInput, leadHours: number): GateOnGlass {
  const reading = input.gates.find((each) => each.gate === gate);
  const dueAt = Temporal.Instant.from(input.keysAt).subtract({ minutes: Math.round(leadHours * 60) });
  const findings = (reading?.findings ?? []).map((finding) => withOverride(finding, input.overrides));
  const isDue =
    Temporal.Instant.compare(Temporal.Instant.from(input.now), dueAt) >= 0 || findings.some(stands);
  const checkedAt: IsoInstant | null = reading?.checkedAt ?? null;
  return {
    gate,
    state: isDue ? stateOf(checkedAt, findings) : "later",
    dueAt: dueAt.toString(),
    isDue,
    checkedAt,
    findings,
  };
}

function withOverride(finding: Finding, overrides: readonly Override[]): FindingOnGlass {
  if (finding.severity === "note") return finding;
  const override = overrides.find((each) => isAbout(each, finding) && mayOverride(finding, each.role));
  return override === undefined ? finding : { ...finding, override };
}

const stands = ({ gate, severity, basis, override }: FindingOnGlass): boolean =>
  severity === "refuse" &&
  override === undefined &&
  !mayOverride({ basis }, "manager") &&
  !IN_COURSE.includes(gate);

const isAbout = (override: Override, finding: Finding) =>
  override.code === finding.code && override.about === finding.about;

function stateOf(checkedAt: IsoInstant | null, findings: readonly FindingOnGlass[]): GateState {
  const open = findings.filter(({ override }) => override === undefined);
  const has = (severity: Finding["severity"]) => open.some((finding) => finding.severity === severity);
  if (has("refuse")) return "refused";
  if (has("refer")) return "referred";
  if (checkedAt === null || has("unchecked")) return "notCheckedYet";
  if (has("condition")) return "conditions";
  if (open.length < findings.length) return "overridden";
  return has("note") ? "notes" : "clear";
}

function worstOf(gates: readonly GateOnGlass[]): GlassState {
  const states = gates.filter(({ isDue }) => isDue).map(({ state }) => GLASS_BY_GATE[state]);
  return WORST_FIRST.find((state) => states.includes(state)) ?? "ready";
}

const SEVERITY_OF: Partial<Record<GateState, readonly Finding["severity"][]>> = {
  refused: ["refuse"],
  referred: ["refer"],
  notCheckedYet: ["unchecked"],
  conditions: ["condition"],
  notes: ["note"],
};

function reasonsOf(gate: GateOnGlass): GlassReading["because"] {
  const severities = SEVERITY_OF[gate.state] ?? [];
  const reasons = gate.findings
    .filter((f) =>
      f.override === undefined
        ? severities.includes(f.severity)
        : gate.state === "overridden" || gate.state === "conditions",
    )
    .map(({ code, about }) =>
      about === undefined ? { gate: gate.gate, code } : { gate: gate.gate, code, about },
    );
  const unseen = gate.state === "notCheckedYet" && gate.checkedAt === null;
  return unseen ? [{ gate: gate.gate, code: "gate.notChecked" }, ...reasons] : reasons;
}

function holds(override: Override, gates: readonly GateReading[]): boolean {
  return gates.some(({ findings }) =>
    findings.some((finding) => isAbout(override, finding) && mayOverride(finding, override.role)),
  );
}
