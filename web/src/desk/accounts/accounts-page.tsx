import { useQuery } from "@tanstack/react-query";
import { useState } from "react";
import { client, type Schemas } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { Button, Loading, ScrollX } from "../../parts/index.ts";
import { dateText, say, t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { useSignedIn } from "../session.ts";
import { usePageTitle } from "../use-page-title.ts";
import { AddAccountDialog } from "./add-account-dialog.tsx";
import { ChangeAccountDialog } from "./change-account-dialog.tsx";

type Account = Schemas["Account"];

/** Everybody who signs in at this depot: let in, changed, shut out. */
export default function AccountsPage() {
  usePageTitle(t("accounts.title"));
  const [isAdding, setAdding] = useState(false);
  const [changing, setChanging] = useState<Account | null>(null);
  const found = useQuery({ queryKey: ["accounts"], queryFn: () => take(client.GET("/api/accounts")) });
  return (
    <>
      <div className="page-head">
        <h1>{t("accounts.title")}</h1>
        <div className="page-acts">
          {found.data !== undefined && (
            <Button look="main" onPress={() => setAdding(true)}>
              {t("accounts.add")}
            </Button>
          )}
        </div>
      </div>
      <section className="card stack">
        <p className="quiet">{t("accounts.lead")}</p>
        {found.isPending && <Loading />}
        <FailureNote failure={found.error} onAgain={() => void found.refetch()} />
        {found.data !== undefined && <AccountsTable all={found.data.accounts} onChange={setChanging} />}
      </section>
      {isAdding && <AddAccountDialog onClose={() => setAdding(false)} />}
      {changing !== null && (
        <ChangeAccountDialog
          account={found.data?.accounts.find(({ id }) => id === changing.id) ?? changing}
          onClose={() => setChanging(null)}
        />
      )}
    </>
  );
}

interface AccountsTableProps {
  readonly all: readonly Account[];
  readonly onChange: (account: Account) => void;
}

function AccountsTable({ all, onChange }: AccountsTableProps) {
  const { user } = useSignedIn();
  const sorted = all.toSorted((a, b) => Number(a.shutAt !== null) - Number(b.shutAt !== null));
  return (
    <ScrollX label={t("accounts.title")}>
      <table className="dense">
        <thead>
          <tr>
            <th>{t("accounts.name")}</th>
            <th>{t("accounts.login")}</th>
            <th>{t("accounts.role")}</th>
            <th>
              <span className="visually-hidden">{t("accounts.change")}</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {sorted.map((account) => (
            <tr key={account.id}>
              <td>
                <b>{account.name}</b>
                {account.id === user.id && <span className="quiet"> ({t("accounts.you")})</span>}
              </td>
              <td>{account.login}</td>
              <td>
                {say(`accounts.role.${account.role}`)}
                <div className="quiet">
                  {account.shutAt === null
                    ? t("accounts.since", { date: dateText(account.createdAt, "full") })
                    : t("accounts.shut", { date: dateText(account.shutAt, "full") })}
                </div>
              </td>
              <td>
                <Button
                  look="quiet"
                  aria-label={t("accounts.changeOne", { name: account.name })}
                  onPress={() => onChange(account)}
                >
                  {t("accounts.change")}
                </Button>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollX>
  );
}
