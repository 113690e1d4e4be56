import { icon } from "@setfair/drawing";
import { useEffect, useRef, useState } from "react";
import { SvgView } from "../parts/svg-view.tsx";
import { t } from "../parts/words.ts";

/** How long the button must be held to open the lock. */
const HOLD_MS = 900;

/** Covers the screen so that drops do nothing; opens when one button is held. */
export function RainLock({ onOpen }: { readonly onOpen: () => void }) {
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const [held, setHeld] = useState(false);
  const button = useRef<HTMLButtonElement>(null);
  const end = () => {
    clearTimeout(timer.current);
    timer.current = undefined;
    setHeld(false);
  };
  const begin = () => {
    if (timer.current !== undefined) return;
    setHeld(true);
    timer.current = setTimeout(onOpen, HOLD_MS);
  };
  useEffect(() => {
    button.current?.focus();
    return () => clearTimeout(timer.current);
  }, []);
  return (
    <div className="rain-lock" role="dialog" aria-modal="true" aria-label={t("yard.lock.on")}>
      <SvgView node={icon("lock")} />
      <p>{t("yard.lock.on")}</p>
      <button
        ref={button}
        type="button"
        className={held ? "button button-main held" : "button button-main"}
        onPointerDown={begin}
        onPointerUp={end}
        onPointerLeave={end}
        onKeyDown={(event) => (event.key === "Enter" || event.key === " ") && begin()}
        onKeyUp={end}
        onContextMenu={(event) => event.preventDefault()}
      >
        {t("yard.lock.hold")}
      </button>
    </div>
  );
}
