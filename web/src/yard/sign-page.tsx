import { useLiveQuery } from "dexie-react-hooks";
import { type ReactNode, useState } from "react";
import type { YardJob } from "../offline/database.ts";
import { ScrollMain } from "../parts/scroll-main.tsx";
import { SignatureField, type Stroke } from "../parts/signature-field.tsx";
import { dateText, t } from "../parts/words.ts";
import { device } from "./device.ts";
import { type Purpose, pageAfter } from "./pages-after.ts";
import { Press } from "./press.tsx";
import { shownText } from "./shown-text.ts";
import { STAFF_NAME } from "./sign-in.tsx";
import { SHEET, type WalkActs } from "./use-walk.ts";
import type { Late } from "./walk-state.ts";

export interface SignPageProps {
  readonly job: YardJob;
  readonly acts: WalkActs;
  readonly purpose: Purpose;
  readonly children?: ReactNode;
  /** what must be done before anybody signs; said beside the button */
  readonly notYet?: string | null;
}

/** The hirer signs, then the staff; both over the same listed records and the text that stands here. */
export function SignPage({ job, acts, purpose, children, notYet = null }: SignPageProps) {
  const { db } = device();
  const staffKept = useLiveQuery(
    async () => ((await db.settings.get(STAFF_NAME))?.value as string | undefined) ?? "",
  );
  const [names, setNames] = useState<{ readonly hirer: string; readonly staff: string | null }>({
    hirer: job.customer,
    staff: null,
  });
  const [hirer, setHirer] = useState<readonly Stroke[]>([]);
  const [staff, setStaff] = useState<readonly Stroke[]>([]);
  const [absent, setAbsent] = useState(false);
  const [signedSheet, setSignedSheet] = useState(false);
  const [working, setWorking] = useState(false);
  const staffName = names.staff ?? staffKept ?? "";
  const text = shownText(job, acts, purpose);
  const { late } = acts.walk;
  const canBeAbsent = job.walk === "back" && late === null;
  const waits =
    notYet ??
    (names.hirer.trim() === "" || staffName.trim() === ""
      ? t("yard.sign.needNames")
      : late !== null && !signedSheet && job.walk === "out"
        ? t("yard.sheet.needSigned")
        : staff.length === 0 || (late === null && !absent && hirer.length === 0)
          ? t(late === null ? "yard.sign.needSignatures" : "yard.sheet.needYours")
          : null);

  const hirerName = (
    <NameField
      label={t("yard.sign.hirer")}
      value={names.hirer}
      onChange={(name) => setNames({ ...names, hirer: name })}
    />
  );

  const sign = async () => {
    setWorking(true);
    const away = late === null ? absent : !signedSheet;
    if (away) await acts.keep("note", { about: purpose, text: t("yard.sign.absentNote") });
    const covered = await coveredRecords(job, purpose);
    const content = (name: string, role: "hirer" | "yard", strokes: readonly Stroke[]) => ({
      records: covered,
      signer: { name: name.trim() },
      role,
      purpose,
      shown: { text, language: "en-GB" },
      strokes: strokes.map((stroke) => stroke.map((point) => ({ ...point }))),
    });
    // with a pen: it covers the sheets as photographed, and nothing that was keyed in after them
    const onSheet = ({ doneAt, sheets }: Late) => ({
      ...content(names.hirer, "hirer", []),
      records: acts.records
        .filter(({ content: { about } }) => about === SHEET)
        .map(({ id, hash }) => ({ id, hash })),
      shown: { text: t("yard.sheet.signedText", { at: dateText(doneAt, "dayTime") }), language: "en-GB" },
      onPaper: { sha256: sheets[0] ?? "", at: doneAt },
    });
    const next = { page: pageAfter(job, purpose), open: null, mark: null, typed: "" };
    if (late !== null && signedSheet) await acts.sign(onSheet(late), acts.place);
    else if (!away) await acts.sign(content(names.hirer, "hirer", hirer), acts.place);
    await acts.sign(content(staffName, "yard", staff), next);
  };
  return (
    <>
      <ScrollMain className="yard-main stack">
        <h1>{t(`yard.sign.title.${purpose}`)}</h1>
        {children}
        <section className="card signed-text">
          {text.split("\n").map((line, index) => (
            // lines of a text have no name of their own
            // biome-ignore lint/suspicious/noArrayIndexKey: the text is written anew as a whole
            <p key={index}>{line}</p>
          ))}
        </section>
        {canBeAbsent && (
          <label className="yard-tick">
            <input
              type="checkbox"
              checked={absent}
              onChange={(event) => setAbsent(event.currentTarget.checked)}
            />
            {t("yard.sign.absent")}
          </label>
        )}
        {late !== null && (
          <section className="card stack-tight">
            <p>{t("yard.sheet.late", { at: dateText(late.doneAt, "dayTime"), by: late.doneBy })}</p>
            {hirerName}
            <label className="yard-tick">
              <input
                type="checkbox"
                checked={signedSheet}
                onChange={(event) => setSignedSheet(event.currentTarget.checked)}
              />
              {t("yard.sheet.hirerSigned")}
            </label>
          </section>
        )}
        {late === null && !absent && (
          <section className="card stack-tight">
            {hirerName}
            <SignatureField label={t("yard.sign.hirer")} onChange={setHirer} />
          </section>
        )}
        <section className="card stack-tight">
          <NameField
            label={t("yard.sign.staff")}
            value={staffName}
            onChange={(name) => setNames({ ...names, staff: name })}
          />
          <SignatureField label={t("yard.sign.staff")} onChange={setStaff} />
        </section>
        {waits !== null && <p role="status">{waits}</p>}
      </ScrollMain>
      <footer className="yard-foot">
        <Press onPress={() => acts.goTo({ ...acts.place, page: "summary" })}>{t("yard.sign.back")}</Press>
        <Press look="main" onPress={sign} disabled={waits !== null || working}>
          {t("yard.sign.do")}
        </Press>
      </footer>
    </>
  );
}

interface NameFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (name: string) => void;
}

const NameField = ({ label, value, onChange }: NameFieldProps) => (
  <label className="field">
    <span className="field-label">{label}</span>
    <input
      className="input"
      value={value}
      maxLength={120}
      onChange={(event) => onChange(event.currentTarget.value)}
    />
  </label>
);

/** Everything that this device recorded of the walk-round, less the signatures; for the briefing, what was shown. */
async function coveredRecords(job: YardJob, purpose: Purpose) {
  const { db } = device();
  const kept = await db.records
    .where("[chain+seq]")
    .between([job.id, 0], [job.id, Number.MAX_SAFE_INTEGER])
    .toArray();
  return kept
    .filter(({ record }) => record.kind !== "signature")
    .filter(
      ({ record }) => purpose === "agreement" || (record.kind === "briefed") === (purpose === "briefing"),
    )
    .map(({ id, hash }) => ({ id, hash }));
}
