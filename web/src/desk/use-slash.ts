import { useEffect } from "react";

const TYPING = "input, textarea, select, [contenteditable], [role=spinbutton]";
/** As long as a page may take to come. */
const WAIT_MS = 3000;

function focusSearch(until: number): void {
  const field = document.querySelector<HTMLInputElement>("#hires-search input");
  if (field !== null) {
    field.focus();
    field.select();
  } else if (performance.now() < until) requestAnimationFrame(() => focusSearch(until));
}

/** A slash, anywhere on the desk, goes to the search for hires. */
export function useSlash(go: (place: string) => void): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.key !== "/" || event.ctrlKey || event.metaKey || event.altKey) return;
      if (event.target instanceof Element && event.target.closest(TYPING) !== null) return;
      if (document.querySelector("[role=dialog]") !== null) return;
      event.preventDefault();
      go("/hires");
      focusSearch(performance.now() + WAIT_MS);
    };
    window.addEventListener("keydown", onKey);
    return () => window.removeEventListener("keydown", onKey);
  }, [go]);
}
