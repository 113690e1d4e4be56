import type { Difference } from "@setfair/engine";
import { useState } from "react";
import type { Schemas } from "../../../api/client.ts";
import { Button, ChoiceField, FigureTap, TextField } from "../../../parts/index.ts";
import { has, say, t } from "../../../parts/words.ts";
import { useDraft } from "../../use-draft.ts";

type Entry = Schemas["Difference"];
type MarkClass = Schemas["MarkClass"];
const CLASSES: readonly MarkClass[] = ["existing", "fairWear", "ours", "hirer", "unknown"];

export interface DifferenceLineProps {
  readonly entry: Entry;
  readonly difference: Difference;
  readonly canDecide: boolean;
  readonly isPending: boolean;
  readonly onDecide: (made: MarkClass, reason: string) => void;
}

const nameOf = (id: string): string => (has(id) ? say(id) : id);

/** What it is, in words. */
export function differenceTitle(difference: Difference): string {
  if (difference.kind === "mark") {
    return t("back.mark", {
      kind: difference.markKind,
      part: nameOf(has(`part.${difference.part}`) ? `part.${difference.part}` : difference.part),
      view: difference.view,
      size: difference.sizeMm ?? 0,
    });
  }
  return nameOf(`check.${difference.checkId}`);
}

function Photos({ hashes, label }: { readonly hashes: readonly string[]; readonly label: string }) {
  if (hashes.length === 0) return <p className="quiet">{t("back.noPhotograph")}</p>;
  return hashes.map((hash) => (
    <a key={hash} href={`/api/photos/${hash}?size=original`} target="_blank" rel="noreferrer">
      <img src={`/api/photos/${hash}?size=large`} alt={label} loading="lazy" />
    </a>
  ));
}

function Evidence({ difference }: { readonly difference: Difference }) {
  const title = differenceTitle(difference);
  return (
    <div className="evidence">
      <div className="evidence-side">
        <strong>{t("back.asItLeft")}</strong>
        {difference.kind === "reading" && <FigureTap figure={difference.out} label={title} />}
        {difference.kind === "count" && <span>{difference.expected}</span>}
        <span className="quiet">{t("back.records", { n: difference.outRecords.length })}</span>
      </div>
      <div className="evidence-side">
        <strong>{t("back.asItCame")}</strong>
        {difference.kind === "reading" && <FigureTap figure={difference.back} label={title} />}
        {difference.kind === "count" && <span>{difference.counted}</span>}
        {difference.kind === "mark" && <Photos hashes={difference.photographs} label={title} />}
        <span className="quiet">{t("back.records", { n: difference.backRecords.length })}</span>
      </div>
    </div>
  );
}

/** One difference with its evidence side by side; a mark's class is decided here. Unknown is not chargeable. */
export function DifferenceLine({ entry, difference, canDecide, isPending, onDecide }: DifferenceLineProps) {
  const [isOpen, setOpen] = useState(entry.class === null && difference.kind === "mark");
  const title = differenceTitle(difference);
  return (
    <li className="line-box">
      <div className="row spread">
        <h3>{title}</h3>
        {difference.kind === "reading" && (
          <span>
            {t("back.change")} <FigureTap figure={difference.change} label={t("back.change")} />
          </span>
        )}
        {difference.kind === "count" && <span>{t("back.short", { n: difference.short })}</span>}
        {entry.class !== null && <strong>{t(`markClass.${entry.class}`)}</strong>}
      </div>
      <Evidence difference={difference} />
      {entry.class !== null && (
        <p className="quiet">
          {t("back.decided", { by: entry.classBy ?? "–", reason: entry.classReason ?? "–" })}
        </p>
      )}
      {canDecide && !isOpen && difference.kind !== "reading" && (
        <div>
          <Button look="quiet" onPress={() => setOpen(true)}>
            {t(entry.class === null ? "back.decide" : "back.decideAgain")}
          </Button>
        </div>
      )}
      {canDecide && isOpen && (
        <Decide entry={entry} isPending={isPending} onDecide={onDecide} onClose={() => setOpen(false)} />
      )}
    </li>
  );
}

function Decide({
  entry,
  isPending,
  onDecide,
  onClose,
}: Pick<DifferenceLineProps, "entry" | "isPending" | "onDecide"> & { readonly onClose: () => void }) {
  const draft = useDraft<{ made: MarkClass; reason: string }>(`class.${entry.id}`, {
    made: entry.class ?? "unknown",
    reason: entry.classReason ?? "",
  });
  const { value, set } = draft;
  return (
    <div className="stack-tight">
      <ChoiceField
        label={t("back.whose")}
        note={t("back.unknownNote")}
        value={value.made}
        options={CLASSES.map((id) => ({ value: id, label: t(`markClass.${id}`) }))}
        onChange={(made) => set({ ...value, made })}
      />
      <TextField
        label={t("back.reason")}
        value={value.reason}
        onChange={(reason) => set({ ...value, reason })}
      />
      <div>
        <Button
          look="main"
          isDisabled={value.reason.trim() === ""}
          isPending={isPending}
          onPress={() => {
            onDecide(value.made, value.reason.trim());
            draft.done();
            onClose();
          }}
        >
          {t("back.keep")}
        </Button>
      </div>
    </div>
  );
}
