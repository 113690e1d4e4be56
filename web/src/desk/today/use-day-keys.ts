import { useEffect } from "react";

const TYPING = "input, textarea, select, [contenteditable], [role=spinbutton], [role=grid], [role=dialog]";

/** Left and right arrows go to the day before and after, T to today, unless somebody is typing. */
export function useDayKeys(acts: {
  readonly move: (days: number) => void;
  readonly today: () => void;
}): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.metaKey || event.altKey || event.shiftKey) return;
      if (event.target instanceof Element && event.target.closest(TYPING) !== null) return;
      if (document.querySelector("[role=dialog]") !== null) return;
      if (event.key === "ArrowLeft") acts.move(-1);
      else if (event.key === "ArrowRight") acts.move(1);
      else if (event.key === "t" || event.key === "T") acts.today();
    };
    window.addEventListener("keydown", onKey);
    return () => window.removeEventListener("keydown", onKey);
  });
}
