import { mayOverride } from "@setfair/engine";
import { may } from "../../auth/roles.ts";
import { forecastOf, liveAhead } from "../../desk/forecast.ts";
import { glassOf } from "../../desk/glass.ts";
import type { Handlers } from "../call.ts";
import { badField, Refusal } from "../refusal.ts";
import { changeHire } from "./change-hire.ts";
import { OPEN_STAGES } from "./hires.ts";

export const glassHandlers = {
  /** By its basis: law and safety never; cover only on the insurer's word; the rest by a named person with a reason. */
  async override(call) {
    await liveAhead(call.signed.store, call.params.id, call.context.now());
    return changeHire(call, OPEN_STAGES, async (hire) => {
      const { gate, code, about, reason, insurer } = call.body;
      const forecast = await forecastOf(hire.store, hire.data);
      const reading = glassOf(hire.data, forecast?.answer ?? null);
      const finding = reading.gates
        .filter((each) => each.gate === gate)
        .flatMap(({ findings }) => findings)
        .find((each) => each.code === code && each.about === about);
      if (finding === undefined) throw badField("code", "expected a finding that stands on this gate now");
      const byCover = finding.basis === "cover";
      const role = byCover ? "insurer" : call.signed.account.role === "manager" ? "manager" : "desk";
      if (!mayOverride(finding, role)) throw new Refusal("overrideRefused", { findings: [finding] });
      if (byCover && insurer === undefined)
        throw badField("insurer", "expected what the insurer said, who said it and on which day");
      if (!byCover && !may(call.signed.account.role, "override.policy")) throw new Refusal("notAllowed");
      await hire.store.overrides.add({
        hireId: hire.data.row.id,
        findingCode: code,
        about: about ?? "",
        basis: byCover ? "cover" : "policy",
        reason:
          insurer === undefined
            ? reason
            : `${insurer.acceptedBy}, ${insurer.reference}, ${insurer.on}: ${reason}`,
        by: hire.by,
      });
      await hire.audit("hire.overridden", { gate, code, about: about ?? null, basis: finding.basis, reason });
    });
  },
} satisfies Partial<Handlers>;
