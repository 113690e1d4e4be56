import { MISSING_KINDS } from "@setfair/engine";
import { useQuery } from "@tanstack/react-query";
import { useDeferredValue, useState } from "react";
import { client, type Schemas } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import {
  Button,
  ChoiceField,
  Empty,
  LinkButton,
  Loading,
  ScrollX,
  SelectField,
  TextField,
} from "../../parts/index.ts";
import { dateText, t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { useSignedIn } from "../session.ts";
import { usePageTitle } from "../use-page-title.ts";
import { DutiesCard } from "./duties-card.tsx";
import { RuleDialog } from "./rule-dialog.tsx";
import {
  bindsTexts,
  countryName,
  holdsText,
  type RuleLine,
  readText,
  ruleName,
  topicName,
  valueText,
} from "./rule-words.ts";
import "../hires/hires.css";
import "./rules.css";

const ALL = "all";

interface Asked {
  readonly q: string;
  readonly country: string;
  readonly topic: string;
  readonly show: "all" | "due";
  readonly months: string;
}
const FIRST: Asked = { q: "", country: ALL, topic: ALL, show: "all", months: "12" };

/** `?q=` opens the page on one rule, as a hire's list of what is not checked does. */
const askedAtFirst = (): Asked => ({
  ...FIRST,
  q: new URLSearchParams(window.location.search).get("q") ?? "",
});

/** Every dated rule: what it says, where that was read and when, what is unsettled, and what to read again. */
export default function RulesPage() {
  usePageTitle(t("rules.title"));
  const [asked, setAsked] = useState(askedAtFirst);
  const [open, setOpen] = useState<string | null>(null);
  const q = useDeferredValue(asked.q.trim());
  const query = {
    due: asked.show === "due" ? ("true" as const) : ("false" as const),
    months: Number(asked.months),
    ...(q === "" ? {} : { q }),
    ...(asked.country === ALL ? {} : { country: asked.country }),
    ...(asked.topic === ALL ? {} : { topic: asked.topic }),
  };
  const rules = useQuery({
    queryKey: ["rules", query],
    queryFn: () => take(client.GET("/api/rules", { params: { query } })),
    placeholderData: (before) => before,
  });
  const line = rules.data?.rules.find(({ id }) => id === open) ?? null;
  return (
    <>
      <div className="page-head">
        <h1>{t("rules.title")}</h1>
        {rules.data !== undefined && <p className="quiet">{t("rules.lead", rules.data.counts)}</p>}
        <div className="page-acts">
          <LinkButton href="/insurance">{t("insurance.title")}</LinkButton>
        </div>
      </div>
      {rules.isPending && <Loading />}
      <FailureNote failure={rules.error} onAgain={() => void rules.refetch()} />
      {rules.data !== undefined && (
        <section className="card stack">
          <p className="quiet">{t("rules.caution")}</p>
          <Filter asked={asked} set={setAsked} found={rules.data} />
          {rules.data.rules.length === 0 ? (
            <Empty>{t("rules.none")}</Empty>
          ) : (
            <RuleTable rules={rules.data.rules} onOpen={setOpen} />
          )}
          <NotChecked />
        </section>
      )}
      <DutiesCard />
      {line !== null && <RuleDialog line={line} onClose={() => setOpen(null)} />}
    </>
  );
}

interface FilterProps {
  readonly asked: Asked;
  readonly set: (asked: Asked) => void;
  readonly found: Schemas["RulesAnswer"];
}

function Filter({ asked, set, found }: FilterProps) {
  const all = { value: ALL, label: t("rules.all") };
  return (
    <search className="rules-search">
      <TextField
        label={t("rules.search")}
        note={t("rules.searchNote")}
        type="search"
        value={asked.q}
        onChange={(words) => set({ ...asked, q: words })}
      />
      <SelectField
        label={t("rules.country")}
        value={asked.country}
        options={[all, ...found.countries.map((value) => ({ value, label: countryName(value) }))]}
        onChange={(country) => set({ ...asked, country })}
      />
      <SelectField
        label={t("rules.topic")}
        value={asked.topic}
        options={[all, ...found.topics.map((value) => ({ value, label: topicName(value) }))]}
        onChange={(topic) => set({ ...asked, topic })}
      />
      <ChoiceField
        label={t("rules.show")}
        value={asked.show}
        options={[
          { value: "all", label: t("rules.show.all") },
          { value: "due", label: t("rules.show.due") },
        ]}
        onChange={(show) => set({ ...asked, show })}
      />
      <SelectField
        label={t("rules.old")}
        value={asked.months}
        options={["3", "6", "12", "24"].map((value) => ({
          value,
          label: t("rules.months", { n: Number(value) }),
        }))}
        onChange={(months) => set({ ...asked, months })}
      />
    </search>
  );
}

interface TableProps {
  readonly rules: readonly RuleLine[];
  readonly onOpen: (id: string) => void;
}

function RuleTable({ rules, onOpen }: TableProps) {
  const { today } = useSignedIn();
  return (
    <ScrollX label={t("rules.title")}>
      <table className="dense hires-table rules-table">
        <thead>
          <tr>
            <th>{t("rules.rule")}</th>
            <th>{t("rules.value")}</th>
            <th>{t("rules.source")}</th>
            <th>{t("rules.due")}</th>
            <th>
              <span className="visually-hidden">{t("rules.open")}</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {rules.map((line) => (
            <RuleRow key={line.id} line={line} today={today} onOpen={onOpen} />
          ))}
        </tbody>
      </table>
    </ScrollX>
  );
}

interface RowProps {
  readonly line: RuleLine;
  readonly today: string;
  readonly onOpen: (id: string) => void;
}

function RuleRow({ line, today, onOpen }: RowProps) {
  const shown = line.now ?? line.shipped[0];
  if (shown === undefined) return null;
  return (
    <tr>
      <td>
        <strong>{ruleName(line.id)}</strong>
        <div className="quiet">
          {countryName(line.country)} · {topicName(line.topic)}
        </div>
      </td>
      <td>
        {valueText(line.id, shown.value, shown.unit)}
        {bindsTexts(shown).map((text) => (
          <div key={text}>{text}</div>
        ))}
        <div className="quiet">
          {line.now === null && line.off === null ? t("rules.notInForce") : holdsText(shown)}
        </div>
        {line.own.length > 0 && <div className="rules-mark">{t("rules.ours")}</div>}
        {line.off !== null && <div className="rules-mark">{t("rules.off", { why: line.off })}</div>}
      </td>
      <td className="rules-source">
        {shown.source}
        <div className="quiet">{readText(shown)}</div>
        {shown.unsettled !== undefined && (
          <div className="rules-mark">{t("rules.unsettled", { why: shown.unsettled })}</div>
        )}
      </td>
      <td>
        <Due line={line} today={today} />
      </td>
      <td>
        <Button
          look="quiet"
          onPress={() => onOpen(line.id)}
          aria-label={`${t("rules.open")}: ${ruleName(line.id)}`}
        >
          {t("rules.open")}
        </Button>
      </td>
    </tr>
  );
}

function Due({ line, today }: { readonly line: RuleLine; readonly today: string }) {
  if (line.due === null) return null;
  const { reasons, dueOn, firstHire, hires } = line.due;
  const isOver = dueOn <= today;
  return (
    <>
      <div className={isOver ? "strip-say-trouble" : undefined}>
        {t(isOver ? "rules.overdue" : "rules.dueOn", { on: dateText(dueOn, "short") })}
      </div>
      <div className="quiet">{reasons.map((reason) => t(`rules.reason.${reason}`)).join(", ")}</div>
      {firstHire !== null && hires > 0 && reasons.includes("beforeHires") && (
        <div className="quiet">{t("rules.firstHire", { n: hires, on: dateText(firstHire, "short") })}</div>
      )}
    </>
  );
}

/** What "not checked" may mean on a hire, so that it is never taken for fine. */
function NotChecked() {
  return (
    <details>
      <summary className="fold">{t("missing.about")}</summary>
      <p>{t("missing.kinds")}</p>
      <ul className="rules-kinds">
        {MISSING_KINDS.map((kind) => (
          <li key={kind}>{t(`missing.kind.${kind}`)}</li>
        ))}
      </ul>
    </details>
  );
}
