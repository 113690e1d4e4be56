import { type ReactNode, useState } from "react";

/** A line that opens. What stands inside is made when it is first opened: a guide holds a hundred cards. */
export function Opening({
  head,
  children,
  className = "day-place",
}: {
  readonly head: ReactNode;
  readonly children: () => ReactNode;
  readonly className?: string;
}) {
  const [wasOpened, setOpened] = useState(false);
  return (
    <details className={className} onToggle={(event) => event.currentTarget.open && setOpened(true)}>
      <summary>{head}</summary>
      {wasOpened && <div className="day-inside">{children()}</div>}
    </details>
  );
}
