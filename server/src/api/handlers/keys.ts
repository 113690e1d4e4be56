import { briefingFor } from "../../desk/briefing.ts";
import { NO_READINESS, toJson } from "../../desk/documents.ts";
import { forecastOf, liveAhead } from "../../desk/forecast.ts";
import { freeze } from "../../desk/freeze.ts";
import { loadAnswer } from "../../desk/gates.ts";
import { glassOf } from "../../desk/glass.ts";
import { type HireData, partOf, VEHICLE_ROOM } from "../../desk/hire-data.ts";
import { instantOf } from "../../desk/local-time.ts";
import { ENGINE_VERSION } from "../../desk/version.ts";
import type { Handlers } from "../call.ts";
import { badField, Refusal } from "../refusal.ts";
import { changeHire, type OpenHire } from "./change-hire.ts";

const GOES: readonly string[] = ["goesWithConditions", "readyWithNotes", "ready"];

function versionsOf(data: HireData) {
  return {
    vehicle: data.vehicle?.version.versionId ?? null,
    terms: data.terms?.version.versionId ?? null,
    insurance: data.insurance?.version.versionId ?? null,
    rules: data.ruleBook.id,
    engine: ENGINE_VERSION,
  };
}

/** What was signed on stays as it was shown. */
function freezeHere(hire: OpenHire, room: string, document: object) {
  const { store, by, data } = hire;
  const whole = toJson({ ...document, versions: versionsOf(data) });
  return freeze(store, { hireId: data.row.id, room, by, at: data.now, document: whole });
}

export const keyHandlers = {
  async handOver(call) {
    await liveAhead(call.signed.store, call.params.id, call.context.now());
    return changeHire(call, ["booked"], async (hire) => {
      const { data } = hire;
      const forecast = await forecastOf(hire.store, data);
      const glass = glassOf(data, forecast?.answer ?? null, data.now);
      if (!GOES.includes(glass.state)) {
        const open = glass.gates
          .filter(({ state }) => state === "refused" || state === "referred" || state === "notCheckedYet")
          .map(({ gate, state }) => ({ path: `glass.${gate}`, expected: state }));
        const findings = glass.gates.flatMap((gate) =>
          gate.findings.filter(({ severity, override }) => override === undefined && severity !== "note"),
        );
        throw new Refusal("refused", {
          problems: open,
          findings: findings.map(({ override: _, ...finding }) => finding),
        });
      }
      await freezeHere(hire, "glass", {
        state: glass.state,
        gates: glass.gates,
        conditions: glass.conditions,
      });
      if (data.vehicle !== null)
        await freezeHere(hire, VEHICLE_ROOM, {
          versionId: data.vehicle.version.versionId,
          document: data.vehicle.document,
        });
      if (forecast !== null)
        await freezeHere(hire, "forecast", { inputHash: forecast.inputHash, answer: forecast.answer });
      const load = loadAnswer(data);
      if (load !== null) await freezeHere(hire, "load", { plan: partOf(data, "load"), answer: load });
      const briefing = briefingFor(data, forecast?.answer ?? null);
      if (briefing !== null) await freezeHere(hire, "briefing", { answer: briefing });
      await hire.putPart("readiness", {
        ...(partOf(data, "readiness") ?? NO_READINESS),
        keysOutAt: data.now,
      });
      await hire.update({ stage: "handedOver" });
      await hire.audit("hire.keysOut", { glass: glass.state });
      await hire.update({ stage: "onHire" });
      await hire.audit("hire.onHire");
    });
  },

  takeBack: (call) =>
    changeHire(call, ["handedOver", "onHire"], async (hire) => {
      const at = instantOf(call.body.at, hire.data.depot.timeZone, "at");
      const readiness = partOf(hire.data, "readiness") ?? NO_READINESS;
      if (readiness.keysOutAt !== null && Date.parse(at) + 60_000 < Date.parse(readiness.keysOutAt)) {
        throw badField("at", "expected a time after the keys went out");
      }
      await hire.store.bookings.release(hire.data.row.id);
      await hire.putPart("readiness", { ...readiness, keysBackAt: at });
      await hire.update({ stage: "returned" });
      await hire.audit("hire.returned", { at: call.body.at });
    }),
} satisfies Partial<Handlers>;
