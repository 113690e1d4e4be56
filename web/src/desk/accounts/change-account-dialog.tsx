import { useMutation } from "@tanstack/react-query";
import { type FormEvent, useState } from "react";
import { client, type Schemas } from "../../api/client.ts";
import { problemAt, take } from "../../api/failure.ts";
import { Button, Dialog, TextField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { DropDraft } from "../keep-row.tsx";
import { KeptMeanwhile } from "../meanwhile/kept-meanwhile.tsx";
import { sendOrRead, useGuardedDraft } from "../meanwhile/use-guarded-draft.ts";
import { queries } from "../query-client.ts";
import { useSignedIn } from "../session.ts";
import { RoleField } from "./role-field.tsx";

interface OfAccount {
  readonly account: Schemas["Account"];
}

/** Name and role, a new password, shut out or let in again. */
export function ChangeAccountDialog({ account, onClose }: OfAccount & { readonly onClose: () => void }) {
  const isSelf = useSignedIn().user.id === account.id;
  const draft = useGuardedDraft(`account.${account.id}`, {
    value: { name: account.name, role: account.role },
    version: account.version,
  });
  const { value, set, basedOn } = draft;
  const isShut = account.shutAt !== null;
  const change = useMutation({
    mutationFn: (shut: boolean) =>
      sendOrRead(
        () =>
          take(
            client.PUT("/api/accounts/{id}", {
              params: { path: { id: account.id }, query: { basedOn } },
              body: { ...value, shut },
            }),
          ),
        () => queries.invalidateQueries({ queryKey: ["accounts"] }),
      ),
    onSuccess: () => {
      draft.done();
      for (const kind of ["accounts", "session"]) void queries.invalidateQueries({ queryKey: [kind] });
      onClose();
    },
  });
  const send = (event: FormEvent) => {
    event.preventDefault();
    change.mutate(isShut);
  };
  return (
    <Dialog title={t("accounts.changeOne", { name: account.name })} isOpen onClose={onClose}>
      <form className="stack" onSubmit={send} noValidate>
        <TextField
          label={t("accounts.name")}
          value={value.name}
          onChange={(name) => set({ ...value, name })}
          error={problemAt(change.error, "name")}
        />
        <RoleField
          value={value.role}
          onChange={(role) => set({ ...value, role })}
          error={problemAt(change.error, "role")}
        />
        <p className="quiet">{t("accounts.signedOut")}</p>
        <KeptMeanwhile
          draft={draft}
          failure={change.error}
          onSettled={change.reset}
          shown={["name", "role"]}
        />
        <div className="row spread">
          {isSelf ? (
            <span />
          ) : (
            <Button
              look={isShut ? "plain" : "danger"}
              isPending={change.isPending}
              onPress={() => change.mutate(!isShut)}
            >
              {t(isShut ? "accounts.openAct" : "accounts.shutAct", { name: account.name })}
            </Button>
          )}
          <DropDraft draft={draft} />
          <Button
            type="submit"
            look="main"
            isPending={change.isPending}
            isDisabled={value.name === account.name && value.role === account.role}
          >
            {t("accounts.keepChange")}
          </Button>
        </div>
        {!isSelf && !isShut && <p className="quiet">{t("accounts.shutNote")}</p>}
      </form>
      {!isSelf && <NewPasswordForm account={account} />}
    </Dialog>
  );
}

function NewPasswordForm({ account }: OfAccount) {
  const [password, setPassword] = useState("");
  const put = useMutation({
    mutationFn: () =>
      take(
        client.PUT("/api/accounts/{id}/password", {
          params: { path: { id: account.id } },
          body: { password },
        }),
      ),
    onSuccess: () => setPassword(""),
  });
  const send = (event: FormEvent) => {
    event.preventDefault();
    put.mutate();
  };
  return (
    <form className="stack" onSubmit={send} noValidate aria-labelledby="new-password">
      <h3 id="new-password">{t("accounts.newPasswordFor", { name: account.name })}</h3>
      <TextField
        label={t("accounts.newPassword")}
        note={t("accounts.newPasswordNote")}
        type="password"
        autoComplete="new-password"
        value={password}
        onChange={setPassword}
        error={problemAt(put.error, "password")}
      />
      <FailureNote failure={put.error} shown={["password"]} />
      {put.isSuccess && <p role="status">{t("accounts.passwordSet")}</p>}
      <div className="row row-end">
        <Button type="submit" isPending={put.isPending} isDisabled={password === ""}>
          {t("accounts.setPassword")}
        </Button>
      </div>
    </form>
  );
}
