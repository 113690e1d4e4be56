import type { ReactNode } from "react";

/** A wide table in its own box: it scrolls sideways with a finger and with the keyboard, the page does not. */
export function ScrollX({ label, children }: { readonly label: string; readonly children: ReactNode }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be reachable with the keyboard
    <section className="scroll-x" aria-label={label} tabIndex={0}>
      {children}
    </section>
  );
}
