import { useEffect } from "react";
import { t } from "../parts/words.ts";

/** Names the page in the browser's tab. */
export function usePageTitle(name: string): void {
  useEffect(() => {
    document.title = t("desk.tab", { page: name });
  }, [name]);
}
