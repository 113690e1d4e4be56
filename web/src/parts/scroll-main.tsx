import type { ReactNode } from "react";

/** The main part of a page whose bar and foot stay: it scrolls by itself, also with the keys. */
export function ScrollMain({
  className,
  children,
}: {
  readonly className: string;
  readonly children: ReactNode;
}) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reached with the keyboard (WCAG 2.1.1)
    <main className={className} tabIndex={0}>
      {children}
    </main>
  );
}
