import { useLiveQuery } from "dexie-react-hooks";
import { lastForgotten } from "../offline/forget.ts";
import { dateText, t } from "../parts/words.ts";
import { device } from "./device.ts";

/** For so long the list says what was forgotten; the page of the outbox says it for good. */
const SHOWN_MS = 86_400_000;

/** Says that this tablet has forgotten what it recorded of somebody who was erased; names nobody. */
export function ForgottenNote({ isForGood = false }: { readonly isForGood?: boolean }) {
  const last = useLiveQuery(() => lastForgotten(device().db));
  if (last === undefined || last === null) return null;
  if (!isForGood && Date.now() - Date.parse(last.at) > SHOWN_MS) return null;
  const zone = Intl.DateTimeFormat().resolvedOptions().timeZone;
  return (
    <p className="yard-note" role="status">
      {t("forget.done", { n: last.hires, at: dateText(last.at, "dayTime", zone) })}
    </p>
  );
}
