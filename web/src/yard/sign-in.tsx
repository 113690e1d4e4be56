import { type FormEvent, useState } from "react";
import { t } from "../parts/words.ts";
import { device } from "./device.ts";

/** Name of whoever signed in last on this device, for the staff's signature. */
export const STAFF_NAME = "staffName";

/** Signs in without leaving what is under way; everything kept here stays whatever the answer. */
export function SignIn({ onDone }: { readonly onDone: () => unknown }) {
  const [state, setState] = useState<"ready" | "working" | "wrong" | "noSignal" | "tooMany">("ready");
  const submit = async (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    setState("working");
    try {
      const response = await fetch("/api/session", {
        method: "POST",
        headers: { "content-type": "application/json" },
        credentials: "same-origin",
        body: JSON.stringify({ login: form.get("login"), password: form.get("password") }),
      });
      if (!response.ok) {
        setState(response.status === 429 ? "tooMany" : response.status >= 500 ? "noSignal" : "wrong");
        return;
      }
      const session = (await response.json()) as { user: { name: string } };
      const { db, flusher } = device();
      await db.settings.put({ key: STAFF_NAME, value: session.user.name });
      setState("ready");
      onDone();
      void flusher.now();
    } catch {
      setState("noSignal");
    }
  };
  return (
    <form className="card stack" onSubmit={submit} aria-labelledby="sign-in">
      <h2 id="sign-in">{t("yard.signIn.title")}</h2>
      <p>{t("yard.signIn.help")}</p>
      <label className="field">
        <span className="field-label">{t("yard.signIn.login")}</span>
        <input className="input" name="login" autoComplete="username" autoCapitalize="none" required />
      </label>
      <label className="field">
        <span className="field-label">{t("yard.signIn.password")}</span>
        <input className="input" name="password" type="password" autoComplete="current-password" required />
      </label>
      {state === "wrong" && (
        <p className="field-error" role="alert">
          {t("yard.signIn.wrong")}
        </p>
      )}
      {state === "tooMany" && (
        <p className="field-error" role="alert">
          {t("yard.signIn.tooMany")}
        </p>
      )}
      {state === "noSignal" && (
        <p className="field-error" role="alert">
          {t("yard.signIn.noSignal")}
        </p>
      )}
      <button className="button button-main" type="submit" disabled={state === "working"}>
        {t("yard.signIn.do")}
      </button>
    </form>
  );
}
