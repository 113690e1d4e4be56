import { useMutation } from "@tanstack/react-query";
import { type FormEvent, useState } from "react";
import { client } from "../../api/client.ts";
import { problemAt, take } from "../../api/failure.ts";
import { Button, Dialog, TextField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { queries } from "../query-client.ts";
import { useDraft } from "../use-draft.ts";
import { RoleField, type StaffRole } from "./role-field.tsx";

const EMPTY: { name: string; login: string; role: StaffRole } = { name: "", login: "", role: "desk" };

/** One more who signs in, with a first password. */
export function AddAccountDialog({ onClose }: { readonly onClose: () => void }) {
  // the password is never kept in the draft
  const [password, setPassword] = useState("");
  const { value, set, done } = useDraft("account", EMPTY);
  const add = useMutation({
    mutationFn: () => take(client.POST("/api/accounts", { body: { ...value, password } })),
    onSuccess: () => {
      void queries.invalidateQueries({ queryKey: ["accounts"] });
      done();
      onClose();
    },
  });
  const send = (event: FormEvent) => {
    event.preventDefault();
    add.mutate();
  };
  return (
    <Dialog title={t("accounts.add")} isOpen onClose={onClose}>
      <form className="stack" onSubmit={send} noValidate>
        <TextField
          label={t("accounts.name")}
          note={t("accounts.nameNote")}
          autoComplete="off"
          value={value.name}
          onChange={(name) => set({ ...value, name })}
          error={problemAt(add.error, "name")}
        />
        <RoleField
          value={value.role}
          onChange={(role) => set({ ...value, role })}
          error={problemAt(add.error, "role")}
        />
        <TextField
          label={t("accounts.login")}
          note={t("accounts.loginNote")}
          autoComplete="off"
          value={value.login}
          onChange={(login) => set({ ...value, login })}
          error={problemAt(add.error, "login")}
        />
        <TextField
          label={t("accounts.first")}
          note={t("accounts.firstNote")}
          type="password"
          autoComplete="new-password"
          value={password}
          onChange={setPassword}
          error={problemAt(add.error, "password")}
        />
        <FailureNote failure={add.error} shown={["name", "role", "login", "password"]} />
        <div className="row row-end">
          <Button type="submit" look="main" isPending={add.isPending}>
            {t("accounts.keep")}
          </Button>
        </div>
      </form>
    </Dialog>
  );
}
