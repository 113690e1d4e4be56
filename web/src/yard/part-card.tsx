import type { YardJob } from "../offline/database.ts";
import { t } from "../parts/words.ts";
import { draftAt } from "./draft-at.ts";
import { Pictures } from "./pictures.tsx";
import { Press } from "./press.tsx";
import type { WalkActs } from "./use-walk.ts";

export interface PartCardProps {
  readonly job: YardJob;
  readonly acts: WalkActs;
  readonly part: string;
  readonly name: string;
  readonly onClose: () => unknown;
}

/** A part that no check asks for: it can still be photographed and marked. */
export function PartCard({ job, acts, part, name, onClose }: PartCardProps) {
  const { place, walk, out } = acts;
  return (
    <section className="card stack-tight" aria-labelledby="part-name">
      <div className="row spread">
        <h2 id="part-name">{name}</h2>
        <Press look="quiet" onPress={onClose}>
          {t("yard.close")}
        </Press>
      </div>
      <Pictures job={job} now={walk.photographs.get(part) ?? []} before={out.photographs.get(part) ?? []} />
      <div className="two">
        <Press onPress={() => acts.goTo({ ...place, mark: draftAt(part) })}>
          {t(job.walk === "out" ? "yard.look.markOut" : "yard.look.mark")}
        </Press>
        <Press onPress={onClose}>{t(job.walk === "out" ? "yard.part.fine" : "yard.part.same")}</Press>
      </div>
    </section>
  );
}
