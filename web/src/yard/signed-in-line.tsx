import { useLiveQuery } from "dexie-react-hooks";
import { useState } from "react";
import { t } from "../parts/words.ts";
import { device } from "./device.ts";
import { Press } from "./press.tsx";
import { STAFF_NAME } from "./sign-in.tsx";

/** Who is signed in on this tablet, and the way out for the next person; what is kept here stays. */
export function SignedInLine({ onOut }: { readonly onOut: () => unknown }) {
  const name = useLiveQuery(async () => (await device().db.settings.get(STAFF_NAME))?.value);
  const [failed, setFailed] = useState(false);
  const out = async () => {
    try {
      const answer = await fetch("/api/session", { method: "DELETE", credentials: "same-origin" });
      setFailed(!answer.ok);
      if (answer.ok) onOut();
    } catch {
      setFailed(true);
    }
  };
  return (
    <div className="row spread">
      <span>{typeof name === "string" ? t("yard.signedIn", { name }) : ""}</span>
      <Press onPress={out}>{t("yard.signOut")}</Press>
      {failed && (
        <p className="field-error" role="alert">
          {t("yard.signOutFailed")}
        </p>
      )}
    </div>
  );
}
