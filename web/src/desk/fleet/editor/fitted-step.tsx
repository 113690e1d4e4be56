import { systemGroups } from "@setfair/engine";
import { TickField } from "../../../parts/index.ts";
import { say, t } from "../../../parts/words.ts";
import { thingName } from "../field-words.ts";
import { systemsOf, toggleKind } from "./draft.ts";
import type { Editing } from "./editing.ts";

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Everything that can be fitted, in the order in which the trade goes through a vehicle. */
export function FittedStep({ editing }: { readonly editing: Editing }) {
  const { draft, set } = editing;
  const fitted = new Set(systemsOf(draft).map(({ kind }) => kind));
  return (
    <>
      <p>
        {t("fleet.edit.fittedNote")} {t("fleet.edit.fittedCount", { n: fitted.size })}.
      </p>
      <div className="editor-groups">
        {systemGroups().map((group) => (
          <fieldset key={group.id} className="card editor-group">
            <legend>{say(`group.${group.id}`)}</legend>
            {group.kinds.map((kind) => (
              <TickField
                key={kind}
                value={fitted.has(kind)}
                onChange={(isFitted) => set(toggleKind(draft, kind, isFitted))}
              >
                {capital(thingName(kind))}
              </TickField>
            ))}
          </fieldset>
        ))}
      </div>
    </>
  );
}
