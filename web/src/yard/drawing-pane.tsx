import { type DrawnMark, drawVehicle } from "@setfair/drawing";
import type { VehicleDescription, View } from "@setfair/engine";
import { type KeyboardEvent, type MouseEvent, useMemo } from "react";
import type { YardJob } from "../offline/database.ts";
import { SvgView } from "../parts/svg-view.tsx";
import { t } from "../parts/words.ts";
import { partWords, viewWords } from "./names.ts";
import type { WalkActs } from "./use-walk.ts";

export interface DrawingPaneProps {
  readonly job: YardJob;
  readonly acts: WalkActs;
  readonly view: View;
  readonly chosen: string | null;
  readonly onTouch: (part: string) => unknown;
}

/** The vehicle from its own description; a touch opens a part, or moves the mark that is being placed. */
export function DrawingPane({ job, acts, view, chosen, onTouch }: DrawingPaneProps) {
  const { place, walk, goTo, round } = acts;
  const vehicle = job.vehicle.description as VehicleDescription;
  const marks = useMemo(() => marksOf(job, acts, view), [job, acts, view]);
  const done = useMemo(() => {
    const checks = round.steps.find((step) => step.view === view)?.checks ?? [];
    return checks.flatMap(({ id, part }) => (part !== undefined && walk.answers.has(id) ? [part] : []));
  }, [round, view, walk]);
  const node = drawVehicle(vehicle, view, {
    nameOf: partWords,
    title: t("yard.drawing", { view: viewWords(view), name: job.vehicle.name }),
    marks,
    done,
    touchable: place.mark === null,
    ...(chosen === null ? {} : { chosen }),
  });
  const touched = (event: MouseEvent<HTMLDivElement>) => {
    if (place.mark !== null) {
      const box = event.currentTarget.querySelector("svg")?.getBoundingClientRect();
      if (box === undefined) return;
      const share = (at: number, from: number, size: number) =>
        Math.round(Math.min(1, Math.max(0, (at - from) / size)) * 1000) / 1000;
      void goTo({
        ...place,
        mark: {
          ...place.mark,
          xShare: share(event.clientX, box.left, box.width),
          yShare: share(event.clientY, box.top, box.height),
        },
      });
      return;
    }
    const part = partOf(event.target);
    if (part !== null) onTouch(part);
  };
  const keyed = (event: KeyboardEvent<HTMLDivElement>) => {
    if (event.key !== "Enter" && event.key !== " ") return;
    const part = partOf(event.target);
    if (part === null) return;
    event.preventDefault();
    onTouch(part);
  };
  return (
    // the parts inside carry the roles and take the keyboard; this only gathers their events
    // biome-ignore lint/a11y/noStaticElementInteractions: the touchable things are the groups inside the drawing
    <div
      className={place.mark === null ? "card drawing" : "card drawing placing"}
      onClick={touched}
      onKeyDown={keyed}
    >
      <SvgView node={node} />
    </div>
  );
}

const partOf = (target: EventTarget): string | null =>
  target instanceof Element ? (target.closest("[data-part]")?.getAttribute("data-part") ?? null) : null;

/** Marks known from before, those of this walk-round, and the one that is being placed. */
function marksOf(job: YardJob, { walk, place }: WalkActs, view: View): readonly DrawnMark[] {
  const all = [
    ...job.knownMarks.map((mark) => ({
      mark,
      title: t("yard.mark.known", { what: markWords(mark.markKind) }),
      isNew: false,
    })),
    ...walk.marks.map((mark) => ({ mark, title: markWords(mark.markKind), isNew: true })),
  ]
    .filter(({ mark }) => mark.view === view)
    .map(
      ({ mark, title, isNew }, index): DrawnMark => ({
        id: mark.recordId,
        x: mark.xShare,
        y: mark.yShare,
        label: String(index + 1),
        title,
        isNew,
      }),
    );
  const draft = place.mark;
  return draft === null
    ? all
    : [
        ...all,
        {
          id: "draft",
          x: draft.xShare,
          y: draft.yShare,
          label: "+",
          title: t("yard.mark.placing"),
          isNew: true,
        },
      ];
}

const markWords = (kind: string): string => partWords(`yard.markKind.${kind}`);
