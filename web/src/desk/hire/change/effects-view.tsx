import type { ReactNode } from "react";
import type { Schemas } from "../../../api/client.ts";
import { Button, FigureTap, FindingsList } from "../../../parts/index.ts";
import { dateText, has, moneyText, say, t } from "../../../parts/words.ts";

export type Effects = Schemas["ChangeEffects"];
type Line = Effects["voided"][number];
type Person = Effects["people"][number];

/** A line of the effects in words; without a text it shows its code, and never takes the sheet down. */
export function lineText(group: "stop" | "void" | "todo" | "say" | "person", { code, facts }: Line): string {
  const id = `changes.${group}.${code}`;
  // facts are the engine's own, as they travelled
  return has(id) ? say(id, facts as Parameters<typeof say>[1]) : code;
}
const dayOrTime = (by: string): string => dateText(by, by.length > 10 ? "dayTime" : "day");

export interface EffectsViewProps {
  readonly effects: Effects;
  /** another hire gives way to a vehicle; absent where this change cannot use it */
  readonly onMove?: ((hireId: string, vehicleId: string) => void) | undefined;
}

/** Everything that a change does, before it is made: what stops it first, then what is lost, to do, and whom to ring. */
export function EffectsView({ effects, onMove }: EffectsViewProps) {
  const { stops, findings, voided, toDo, people, says } = effects;
  const isIncident = effects.kind === "accident" || effects.kind === "breakdown";
  const toKnow = <Lines title={t("changes.says")} group="say" lines={says} />;
  return (
    <div className="change-effects">
      {!effects.canConfirm && (
        <p className="change-refused" role="status">
          {t("changes.cannot")}
        </p>
      )}
      {isIncident && toKnow}
      <Lines title={t("changes.stops")} group="stop" lines={stops} />
      {findings.length > 0 && (
        <Section title={t("changes.found")}>
          <FindingsList findings={findings} />
        </Section>
      )}
      {people.length > 0 && (
        <Section title={t("changes.people")}>
          <ol className="change-people">
            {people.map((person) => (
              <PersonLine key={person.hireId} person={person} onMove={onMove} />
            ))}
          </ol>
        </Section>
      )}
      <Lines title={t("changes.voided")} group="void" lines={voided} />
      {toDo.length > 0 && <ToDo toDo={toDo} />}
      <Money money={effects.money} />
      <Brief brief={effects.brief} />
      {!isIncident && toKnow}
    </div>
  );
}

function Section({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  return (
    <section className="stack-tight">
      <h3>{title}</h3>
      {children}
    </section>
  );
}

interface LinesProps {
  readonly title: string;
  readonly group: "stop" | "void" | "say";
  readonly lines: readonly Line[];
}
function Lines({ title, group, lines }: LinesProps) {
  if (lines.length === 0) return null;
  return (
    <Section title={title}>
      <ul className={group === "void" ? "change-lines change-void" : "change-lines"}>
        {lines.map((line) => (
          <li key={line.code + JSON.stringify(line.facts)}>{lineText(group, line)}</li>
        ))}
      </ul>
    </Section>
  );
}

function ToDo({ toDo }: { readonly toDo: Effects["toDo"] }) {
  const missed = toDo.filter(({ misses }) => misses !== undefined);
  const inTime = toDo.filter(({ misses }) => misses === undefined);
  const leaves = missed[0]?.misses;
  return (
    <>
      {leaves !== undefined && (
        <Section title={t("depot.notBeforeCrossing", { at: dayOrTime(leaves), n: missed.length })}>
          <Tasks tasks={missed} />
        </Section>
      )}
      <Section
        title={leaves === undefined ? t("changes.toDo") : t("depot.stillBefore", { n: inTime.length })}
      >
        <Tasks tasks={inTime} />
        <p className="quiet">{t("changes.toDoNote")}</p>
      </Section>
    </>
  );
}

function Tasks({ tasks }: { readonly tasks: Effects["toDo"] }) {
  return (
    <ul className="change-lines">
      {tasks.map((task) => (
        <li key={task.code + JSON.stringify(task.facts)} className={task.late ? "change-late" : undefined}>
          {lineText("todo", task)}
          {task.by !== null && (
            <span className="quiet"> · {t("changes.toDoBy", { by: dayOrTime(task.by) })}</span>
          )}
          {task.late && <strong> · {t("changes.toDoLate")}</strong>}
        </li>
      ))}
    </ul>
  );
}

function Money({ money }: { readonly money: Effects["money"] }) {
  if (money === null) return null;
  const { before, after, hirer, ours } = money;
  const back = { ...hirer, pence: Math.abs(hirer.pence) };
  return (
    <Section title={t("changes.money")}>
      <dl className="change-money">
        <dt>{t("changes.money.before")}</dt>
        <dd>{moneyText(before)}</dd>
        <dt>{t("changes.money.after")}</dt>
        <dd>{moneyText(after)}</dd>
        {hirer.pence === 0 ? (
          <dt>{t("changes.money.hirerSame")}</dt>
        ) : (
          <>
            <dt>{t(hirer.pence > 0 ? "changes.money.hirerMore" : "changes.money.hirerBack")}</dt>
            <dd>{moneyText(back)}</dd>
          </>
        )}
        {ours.pence > 0 && (
          <>
            <dt>{t("changes.money.ours")}</dt>
            <dd>{moneyText(ours)}</dd>
          </>
        )}
      </dl>
    </Section>
  );
}

function Brief({ brief }: { readonly brief: Effects["brief"] }) {
  if (brief === null) return null;
  const { again, same, minutes } = brief;
  if (again.length === 0)
    return <Section title={t("changes.brief")}>{<p>{t("changes.briefNone", { same })}</p>}</Section>;
  const title = (id: string) => (has(`card.${id}.title`) ? say(`card.${id}.title`) : id);
  return (
    <Section title={t("changes.brief")}>
      <p>
        {t("changes.briefSome", { again: again.length, same })}{" "}
        <FigureTap figure={minutes} label={t("changes.briefMinutes")} />
      </p>
      <ul className="change-cards">
        {again.map(({ id, why }) => (
          <li key={id}>
            {title(id)} <span className="quiet">{t(`changes.briefWhy.${why}`)}</span>
          </li>
        ))}
      </ul>
    </Section>
  );
}

function PersonLine({ person, onMove }: { readonly person: Person } & Pick<EffectsViewProps, "onMove">) {
  const { customer, reference, telephone, hireId, offers } = person;
  return (
    <li className="stack-tight">
      <p>
        <strong>{customer}</strong> <span className="quiet">{reference}</span>{" "}
        {telephone !== "" && <a href={`tel:${telephone.replaceAll(" ", "")}`}>{telephone}</a>}
      </p>
      <p>{lineText("person", person)}</p>
      {onMove !== undefined && offers.length > 0 && (
        <div className="row">
          {offers.map(({ vehicleId, name, registration }) => (
            <Button key={vehicleId} onPress={() => onMove(hireId, vehicleId)}>
              {t("changes.people.move", { name, registration })}
            </Button>
          ))}
        </div>
      )}
      {onMove !== undefined && offers.length === 0 && <p className="quiet">{t("changes.people.noOffer")}</p>}
    </li>
  );
}
