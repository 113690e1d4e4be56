import type { Difference } from "@setfair/engine";
import { useState } from "react";
import type { Schemas } from "../../../api/client.ts";
import { Button, FigureTap } from "../../../parts/index.ts";
import { has, say, t } from "../../../parts/words.ts";
import { DecideForm } from "./decide-form.tsx";
import { DefectDialog } from "./defect-dialog.tsx";
import { Photos } from "./photos.tsx";

type Entry = Schemas["Difference"];

export interface DifferenceLineProps {
  readonly hireId: string;
  readonly vehicleId: string | null;
  readonly entry: Entry;
  readonly difference: Difference;
  readonly canDecide: boolean;
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

/** How it left beside how it came back: records, readings and photographs of both. */
function Evidence({
  difference,
  asItLeft,
}: Pick<DifferenceLineProps, "difference"> & Pick<Entry, "asItLeft">) {
  const title = differenceTitle(difference);
  return (
    <div className="evidence">
      <div className="evidence-side">
        <strong>{t("back.asItLeft")}</strong>
        {difference.kind === "reading" && <FigureTap figure={difference.out} label={title} />}
        {difference.kind === "count" && <span>{difference.expected}</span>}
        {(difference.kind === "mark" || asItLeft.photographs.length > 0) && (
          <Photos hashes={asItLeft.photographs} label={t("settling.left", { title })} />
        )}
        {difference.kind === "mark" && (
          <span className="quiet">{t("settling.leftOf", { of: asItLeft.of ?? "none" })}</span>
        )}
        {difference.kind !== "mark" && (
          <span className="quiet">{t("back.records", { n: difference.outRecords.length })}</span>
        )}
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
export function DifferenceLine(props: DifferenceLineProps) {
  const { hireId, vehicleId, entry, difference, canDecide } = props;
  const [isOpen, setOpen] = useState(entry.class === null && difference.kind === "mark");
  const [noting, setNoting] = useState(false);
  const title = differenceTitle(difference);
  const photograph = difference.photographs.at(-1) ?? null;
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
      <Evidence difference={difference} asItLeft={entry.asItLeft} />
      {entry.class !== null && (
        <p className="quiet">
          {t("back.decided", { by: entry.classBy ?? "–", reason: entry.classReason ?? "–" })}
          {entry.incident !== null && ` · ${t("settling.incidentIs", { incident: entry.incident })}`}
          {entry.todo !== null && ` · ${t(`settling.todo.${entry.todo}`)}`}
        </p>
      )}
      <div className="row">
        {canDecide && !isOpen && difference.kind !== "reading" && (
          <Button look="quiet" onPress={() => setOpen(true)}>
            {t(entry.class === null ? "back.decide" : "back.decideAgain")}
          </Button>
        )}
        {difference.kind !== "reading" && vehicleId !== null && (
          <Button look="quiet" onPress={() => setNoting(true)}>
            {t("settling.defect.open")}
          </Button>
        )}
      </div>
      {canDecide && isOpen && <DecideForm hireId={hireId} entry={entry} onClose={() => setOpen(false)} />}
      {noting && vehicleId !== null && (
        <DefectDialog
          vehicleId={vehicleId}
          hireId={hireId}
          what={title}
          photograph={photograph}
          onClose={() => setNoting(false)}
        />
      )}
    </li>
  );
}
