import {
  citeSource,
  type GlassReading,
  mayOverride,
  type Override,
  type RoomAnswer,
  readGlass,
  type TripForecast,
  withRules,
} from "@setfair/engine";
import type { z } from "zod";
import type { glassSchema } from "../api/schemas/glass.ts";
import type { OverrideRow, Store } from "../store/types.ts";
import { timesOf } from "./depot-times.ts";
import { NO_READINESS, type ReadinessDocument, toJson } from "./documents.ts";
import { readGates } from "./gates.ts";
import { type HireData, partOf } from "./hire-data.ts";

export type GlassAnswer = z.input<typeof glassSchema>;
const BEFORE_KEYS: readonly string[] = ["enquiry", "quote", "booked"];
export const isBeforeKeys = (stage: string): boolean => BEFORE_KEYS.includes(stage);

/**
 * May the keys go? Computed from everything unsigned as it is now. `keysAt` is when they are to go: at the
 * handover itself that is now, so that every gate counts however early it is.
 */
export function glassOf(
  data: HireData,
  forecast: RoomAnswer<TripForecast> | null,
  keysAt: string = data.row.from,
): GlassReading {
  const readiness = partOf(data, "readiness") ?? NO_READINESS;
  return readGlass({
    now: data.now,
    handedOver: isBeforeKeys(data.row.stage) ? null : (readiness.keysOutAt ?? data.row.from),
    keysAt,
    gates: readGates(data, forecast),
    leadTimes: timesOf(data.depotDocument).leadHours,
    overrides: data.overrides.map(overrideOf),
  });
}

/** Cover passes only through the insurer; policy through the person who gave the reason. */
function overrideOf(row: OverrideRow): Override {
  return {
    code: row.findingCode,
    ...(row.about === "" ? {} : { about: row.about }),
    by: row.by,
    role: row.basis === "cover" ? "insurer" : "desk",
    reason: row.reason,
  };
}

/** The glass as the screens take it; null once the keys have gone. `nameOf` gives an account's name. */
export function glassAnswer(
  data: HireData,
  reading: GlassReading,
  nameOf: (accountId: string) => string,
): GlassAnswer | null {
  return withRules(data.ruleBook, () => glassInWords(data, reading, nameOf));
}

function glassInWords(
  data: HireData,
  reading: GlassReading,
  nameOf: (accountId: string) => string,
): GlassAnswer | null {
  const { state } = reading;
  if (state === "onTheRoad") return null;
  const readiness = partOf(data, "readiness") ?? NO_READINESS;
  const atOf = (code: string, about: string | undefined) =>
    data.overrides.find((row) => row.findingCode === code && row.about === (about ?? ""))?.at ?? data.now;
  return {
    state,
    before:
      readiness.glass !== null && readiness.glass.state !== state ? readiness.glass : readiness.glassBefore,
    because: [...reading.because],
    gates: reading.gates.map((gate) => {
      return {
        gate: gate.gate,
        state: gate.state,
        dueAt: gate.dueAt,
        isDue: gate.isDue,
        checkedAt: gate.checkedAt,
        findings: gate.findings.map(({ override, ...finding }) => ({
          finding: plainFinding(finding),
          overridable: mayOverride(finding, "desk")
            ? "person"
            : mayOverride(finding, "insurer")
              ? "insurer"
              : "never",
          override:
            override === undefined
              ? null
              : {
                  by: nameOf(override.by),
                  role: override.role,
                  at: atOf(finding.code, finding.about),
                  reason: override.reason,
                },
        })),
      };
    }),
  };
}

/** A finding as the answer's schema takes it: copies of its lists, which the room keeps readonly, and its sources in words. */
export function plainFinding(finding: GlassReading["conditions"][number]): FindingAnswer {
  const { code, gate, severity, basis, facts, sources, mends, about } = finding;
  return {
    code,
    gate,
    severity,
    basis,
    facts: { ...facts },
    // several rules of one source read alike: it is named once
    sources: [...new Set(sources.map(citeSource))],
    mends: mends.map((mend) => ({ code: mend.code, facts: { ...mend.facts } })),
    ...(about === undefined ? {} : { about }),
  };
}
export type FindingAnswer = GlassAnswer["gates"][number]["findings"][number]["finding"];

/** Keeps where the glass stands after a change, and where it stood before, for the brass hand. */
export async function keepGlass(
  store: Store,
  data: HireData,
  reading: GlassReading,
  by: string,
): Promise<void> {
  if (reading.state === "onTheRoad") return;
  const readiness = partOf(data, "readiness") ?? NO_READINESS;
  if (readiness.glass?.state === reading.state) return;
  const next: ReadinessDocument = {
    ...readiness,
    glass: { state: reading.state, at: data.now },
    glassBefore: readiness.glass,
  };
  await store.hires.putPart(data.row.id, "readiness", toJson(next), data.parts.readiness?.version ?? 0, by);
}
