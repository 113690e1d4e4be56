import { type ReactNode, useState } from "react";
import { t } from "../parts/words.ts";
import { bringWords, useAllWords } from "./guide-words.ts";

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
  const hasWords = useAllWords();
  const open = () => {
    void bringWords();
    setOpened(true);
  };
  return (
    <details className={className} onToggle={(event) => event.currentTarget.open && open()}>
      <summary>{head}</summary>
      {wasOpened && <div className="day-inside">{hasWords ? children() : <p>{t("hirer.loading")}</p>}</div>}
    </details>
  );
}
