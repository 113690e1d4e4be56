import type { LoadAgainstLimit } from "@setfair/engine";
import { classes, FigureTap } from "../../../parts/index.ts";
import { figureText, t } from "../../../parts/words.ts";

/** One load against its limit: bar, figures, what is spare, and the chance of being over. */
export function WeighLine({ name, against }: { readonly name: string; readonly against: LoadAgainstLimit }) {
  const scale = Math.max(against.load.value, against.limit.value) * 1.06;
  const isOver = against.margin.value < 0;
  const margin = { ...against.margin, value: Math.abs(against.margin.value) };
  return (
    <div className={classes("weigh", isOver && "weigh-over")}>
      <strong>{name}</strong>
      <div className="weigh-bar" aria-hidden="true">
        <span className="weigh-load" style={{ width: `${(against.load.value / scale) * 100}%` }} />
        <span className="weigh-limit" style={{ left: `${(against.limit.value / scale) * 100}%` }} />
      </div>
      <strong className="num nowrap">
        <FigureTap figure={against.margin} label={t(isOver ? "load.overBy" : "load.spare")}>
          {t(isOver ? "load.overText" : "load.spareText", { margin: figureText(margin) })}
        </FigureTap>
      </strong>
      <span className="weigh-note">
        <FigureTap figure={against.load} label={name} /> {t("load.of")}{" "}
        <FigureTap figure={against.limit} label={t("load.limit")} /> · {t("load.chanceOver")}{" "}
        <FigureTap figure={against.chanceOver} label={t("load.chanceOver")} />
      </span>
    </div>
  );
}
