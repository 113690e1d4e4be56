import { useMutation } from "@tanstack/react-query";
import { type FormEvent, useState } from "react";
import { client } from "../../api/client.ts";
import { problemAt, take } from "../../api/failure.ts";
import { Button, TextField } from "../../parts/index.ts";
import { t, writeDistancesIn, writeTimesIn } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { queries } from "../query-client.ts";

/** The door: mail address and password. */
export function SignInPage() {
  const [login, setLogin] = useState("");
  const [password, setPassword] = useState("");
  const signIn = useMutation({
    mutationFn: () => take(client.POST("/api/session", { body: { login, password } })),
    onSuccess: (session) => {
      writeTimesIn(session.depot.timeZone);
      writeDistancesIn(session.depot.distances);
      queries.setQueryData(["session"], session);
    },
  });
  const send = (event: FormEvent) => {
    event.preventDefault();
    signIn.mutate();
  };
  return (
    <main className="door">
      <form className="card stack door-card" onSubmit={send} noValidate>
        <h1>{t("desk.signIn.title")}</h1>
        <TextField
          label={t("desk.signIn.login")}
          name="login"
          autoComplete="username"
          value={login}
          onChange={setLogin}
          error={problemAt(signIn.error, "login")}
          required
          autoFocus
        />
        <TextField
          label={t("desk.signIn.password")}
          type="password"
          name="password"
          autoComplete="current-password"
          value={password}
          onChange={setPassword}
          error={problemAt(signIn.error, "password")}
          required
        />
        <FailureNote failure={signIn.error} shown={["login", "password"]} />
        <Button
          type="submit"
          look="main"
          isPending={signIn.isPending}
          isDisabled={login === "" || password === ""}
        >
          {t(signIn.isPending ? "desk.sending" : "desk.signIn.act")}
        </Button>
      </form>
    </main>
  );
}
