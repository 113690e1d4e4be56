import { useState } from "react";
import type { Schemas } from "../../../api/client.ts";
import { Button, FindingLine, LinkButton } from "../../../parts/index.ts";
import { dateText, t } from "../../../parts/words.ts";
import { useSignedIn } from "../../session.ts";
import { placeOfGate } from "../../where.ts";
import { OverrideDialog } from "./override-dialog.tsx";

type GateOnGlass = Schemas["GateOnGlass"];
type GateFinding = Schemas["GateFinding"];

export interface GateCardProps {
  readonly gate: GateOnGlass;
  readonly hireId: string;
}

/** Who may let a finding pass, here and now; null where nobody or somebody else. */
function useMayOverride(finding: GateFinding): boolean {
  const { may } = useSignedIn();
  if (finding.override !== null || finding.overridable === "never") return false;
  return may.includes(finding.overridable === "insurer" ? "override.cover" : "override.policy");
}

function OverrideWords({ override }: { readonly override: NonNullable<GateFinding["override"]> }) {
  return (
    <span className="overridden">
      {t("hire.overridden", {
        by: override.by,
        at: dateText(override.at, "dayTime"),
        reason: override.reason ?? t("whoSees.atDesk"),
      })}
    </span>
  );
}

function OpenFinding({ gate, hireId, entry }: GateCardProps & { readonly entry: GateFinding }) {
  const [isOpen, setOpen] = useState(false);
  const mayOverride = useMayOverride(entry);
  const { severity } = entry.finding;
  const act =
    mayOverride && severity !== "note" ? (
      <Button look={severity === "condition" ? "quiet" : "plain"} onPress={() => setOpen(true)}>
        {t(`hire.override.${entry.overridable === "insurer" ? "cover" : "policy"}`)}
      </Button>
    ) : undefined;
  return (
    <>
      <FindingLine
        finding={entry.finding}
        act={act}
        more={entry.override === null ? undefined : <OverrideWords override={entry.override} />}
      />
      {isOpen && (
        <OverrideDialog hireId={hireId} gate={gate.gate} entry={entry} onClose={() => setOpen(false)} />
      )}
    </>
  );
}

/** One gate that is not clear: its findings, and what can be done here. */
export function GateCard({ gate, hireId }: GateCardProps) {
  const where = placeOfGate(hireId, gate.gate);
  return (
    <li className="gate">
      <div className="row spread">
        <h3>
          {t(`gate.${gate.gate}`)} <span className="quiet">{t(`gateState.${gate.state}`)}</span>
        </h3>
        {!where.endsWith("/now") && <LinkButton href={where}>{t(`desk.act.${gate.gate}`)}</LinkButton>}
      </div>
      {gate.findings.length > 0 && (
        <ul className="findings">
          {gate.findings.map((entry) => (
            <OpenFinding
              key={`${entry.finding.code}.${entry.finding.about ?? ""}`}
              gate={gate}
              hireId={hireId}
              entry={entry}
            />
          ))}
        </ul>
      )}
    </li>
  );
}
