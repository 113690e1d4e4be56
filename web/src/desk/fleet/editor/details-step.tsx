import { isSystemKind, sketchVehicle, specDefaults, systemGroups, systemModule } from "@setfair/engine";
import type { ReactNode } from "react";
import { Button } from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import { thingName } from "../field-words.ts";
import { addAnother, type DraftSystem, removeSystem, systemsOf } from "./draft.ts";
import type { Editing } from "./editing.ts";
import { SpecFieldView } from "./spec-field.tsx";

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

interface Placed {
  readonly system: DraftSystem;
  /** its place in the description */
  readonly index: number;
}

/** In the trade's order; what this version does not know comes last. */
function inOrder(editing: Editing): readonly Placed[] {
  const order = systemGroups().flatMap(({ kinds }) => kinds);
  const rank = (kind: string) => (order.includes(kind) ? order.indexOf(kind) : order.length);
  return systemsOf(editing.draft)
    .map((system, index) => ({ system, index }))
    .sort((a, b) => rank(a.system.kind) - rank(b.system.kind));
}

const isAsked = ({ system }: Placed): boolean =>
  !isSystemKind(system.kind) ||
  Object.values(systemModule(system.kind).spec.fields).some((field) => field.default === undefined);

/** For each thing fitted, what must be known of it; the rest has a usual value. */
export function DetailsStep({ editing }: { readonly editing: Editing }) {
  const systems = inOrder(editing);
  const usual = systems.filter((each) => !isAsked(each));
  return (
    <>
      <p>{t("fleet.edit.detailsNote")}</p>
      {systems.filter(isAsked).map((each) => (
        <SystemCard key={each.system.id} placed={each} editing={editing} />
      ))}
      {usual.length > 0 && (
        <details>
          <summary className="fold">{t("fleet.edit.allUsual", { n: usual.length })}</summary>
          <div className="stack">
            {usual.map((each) => (
              <SystemCard key={each.system.id} placed={each} editing={editing} />
            ))}
          </div>
        </details>
      )}
    </>
  );
}

interface SystemCardProps {
  readonly placed: Placed;
  readonly editing: Editing;
}

function SystemCard({ placed, editing }: SystemCardProps) {
  const { system, index } = placed;
  const { draft, set } = editing;
  const thing = thingName(system.kind);
  const isKnown = isSystemKind(system.kind);
  const isRepeated = systemsOf(draft).filter(({ kind }) => kind === system.kind).length > 1;
  const title = isRepeated ? `${capital(thing)} (${system.id})` : capital(thing);
  return (
    <section className="card stack-tight" aria-label={title} data-path={`systems.${index}.kind`}>
      <h3>{title}</h3>
      {isKnown ? (
        <SystemFields placed={placed} editing={editing}>
          <Button look="quiet" onPress={() => set(addAnother(draft, system.kind))}>
            {t("fleet.edit.another", { thing })}
          </Button>
          {isRepeated && (
            <Button look="quiet" onPress={() => set(removeSystem(draft, index))}>
              {t("fleet.edit.remove", { thing: title })}
            </Button>
          )}
        </SystemFields>
      ) : (
        <>
          <p className="field-error">{t("fleet.edit.unknownKind", { kind: system.kind })}</p>
          <div>
            <Button onPress={() => set(removeSystem(draft, index))}>
              {t("fleet.edit.remove", { thing: title })}
            </Button>
          </div>
        </>
      )}
    </section>
  );
}

function SystemFields({ placed, editing, children }: SystemCardProps & { readonly children: ReactNode }) {
  const { system, index } = placed;
  const fields = Object.entries(systemModule(system.kind).spec.fields);
  const defaults = specDefaults(system.kind, sketchVehicle(editing.draft.description).dimensions, {
    ...system.spec,
  });
  const asked = fields.filter(([, field]) => field.default === undefined);
  const more = fields.filter(([, field]) => field.default !== undefined);
  const isWrong = more.some(([name]) => editing.wrongAt(`systems.${index}.spec.${name}`) !== undefined);
  const view = ([name, field]: (typeof fields)[number]) => (
    <SpecFieldView
      key={name}
      kind={system.kind}
      name={name}
      field={field}
      path={`systems.${index}.spec.${name}`}
      usual={defaults[name]}
      editing={editing}
    />
  );
  return (
    <>
      {asked.length > 0 && <div className="sheet-fields">{asked.map(view)}</div>}
      {more.length > 0 && (
        <details open={isWrong || undefined}>
          <summary className="fold">{t("fleet.edit.more", { n: more.length })}</summary>
          <div className="sheet-fields">{more.map(view)}</div>
          <div className="row">{children}</div>
        </details>
      )}
    </>
  );
}
