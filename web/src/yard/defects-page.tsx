import type { YardJob } from "../offline/database.ts";
import { t } from "../parts/words.ts";
import { openDefectsOf } from "./open-defects.ts";
import { SignPage } from "./sign-page.tsx";
import type { WalkActs } from "./use-walk.ts";

/** What goes out not working: told one by one, then signed for together with the condition. */
export function DefectsPage({ job, acts }: { readonly job: YardJob; readonly acts: WalkActs }) {
  const defects = openDefectsOf(job);
  const left = defects.filter(({ id, told }) => !told && !acts.walk.told.has(id));
  const tell = (id: string, text: string) =>
    void acts.keep("note", { about: `defect.${id}`, text, told: true });
  return (
    <SignPage
      job={job}
      acts={acts}
      purpose="condition"
      notYet={left.length === 0 ? null : t("evidence.tell.left", { n: left.length })}
    >
      <section className="card stack-tight">
        <h2>{t("evidence.tell.title")}</h2>
        <ul className="stack-tight">
          {defects.map(({ id, what, where, told }) => {
            const isTold = told || acts.walk.told.has(id);
            const text = t("evidence.tell.line", { what, where });
            return (
              <li key={id} className="stack-tight">
                <span>{text}</span>
                <button
                  type="button"
                  className="chip"
                  aria-pressed={isTold}
                  disabled={isTold}
                  onClick={() => tell(id, text)}
                >
                  {t(isTold ? "evidence.tell.told" : "evidence.tell.do")}
                </button>
              </li>
            );
          })}
        </ul>
      </section>
    </SignPage>
  );
}
