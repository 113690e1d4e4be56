import { icon } from "@setfair/drawing";
import type { Guide } from "../offline/database.ts";
import { SvgView } from "../parts/svg-view.tsx";
import { t } from "../parts/words.ts";

export const telephoneOf = (guide: Guide): string => `tel:${guide.depot.telephone.replace(/[^+\d]/g, "")}`;

/** Rings the depot; `onCall` keeps what was tried before the telephone takes over. */
export function CallLink({
  guide,
  onCall,
  className = "button button-main button-wide",
}: {
  readonly guide: Guide;
  readonly onCall: () => void;
  readonly className?: string;
}) {
  return (
    <a className={className} href={telephoneOf(guide)} onClick={onCall}>
      <SvgView node={icon("phone")} />
      <span>
        {t("hirer.fault.call", { depot: guide.depot.name })}{" "}
        <span className="nowrap">{guide.depot.telephone}</span>
      </span>
    </a>
  );
}
