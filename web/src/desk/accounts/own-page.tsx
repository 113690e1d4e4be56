import { useMutation } from "@tanstack/react-query";
import { type FormEvent, useState } from "react";
import { client } from "../../api/client.ts";
import { problemAt, take } from "../../api/failure.ts";
import { Button, TextField } from "../../parts/index.ts";
import { say, t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { useSignedIn } from "../session.ts";
import { usePageTitle } from "../use-page-title.ts";

/** Who one is here, and one's own password. */
export default function OwnPage() {
  const { user } = useSignedIn();
  usePageTitle(user.name);
  const [current, setCurrent] = useState("");
  const [password, setPassword] = useState("");
  const change = useMutation({
    mutationFn: () => take(client.PUT("/api/session/password", { body: { current, password } })),
    onSuccess: () => {
      setCurrent("");
      setPassword("");
    },
  });
  const send = (event: FormEvent) => {
    event.preventDefault();
    change.mutate();
  };
  return (
    <>
      <div className="page-head">
        <h1>{user.name}</h1>
        <p className="quiet">{say(`accounts.role.${user.role}`)}</p>
      </div>
      <form className="card stack door-card" onSubmit={send} noValidate aria-labelledby="own-password">
        <h2 id="own-password">{t("accounts.own")}</h2>
        <p className="quiet">{t("accounts.ownLead")}</p>
        {/* so that the browser's own keeper of passwords knows whose it is */}
        <input type="text" name="login" autoComplete="username" value={user.login} readOnly hidden />
        <TextField
          label={t("accounts.current")}
          type="password"
          autoComplete="current-password"
          value={current}
          onChange={setCurrent}
          error={problemAt(change.error, "current")}
        />
        <TextField
          label={t("accounts.newPassword")}
          note={t("accounts.newPasswordNote")}
          type="password"
          autoComplete="new-password"
          value={password}
          onChange={setPassword}
          error={problemAt(change.error, "password")}
        />
        <FailureNote failure={change.error} shown={["current", "password"]} />
        {change.isSuccess && current === "" && <p role="status">{t("accounts.ownDone")}</p>}
        <div className="row row-end">
          <Button
            type="submit"
            look="main"
            isPending={change.isPending}
            isDisabled={current === "" || password === ""}
          >
            {t("accounts.ownKeep")}
          </Button>
        </div>
      </form>
    </>
  );
}
