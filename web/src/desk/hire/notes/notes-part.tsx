import { useMutation } from "@tanstack/react-query";
import { client, type Schemas } from "../../../api/client.ts";
import { problemAt, take } from "../../../api/failure.ts";
import { Button, Empty, Loading, TextField } from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import { DropDraft } from "../../keep-row.tsx";
import { KeptMeanwhile } from "../../meanwhile/kept-meanwhile.tsx";
import { sendOrRead, useGuardedDraft } from "../../meanwhile/use-guarded-draft.ts";
import { queries } from "../../query-client.ts";
import type { PartProps } from "../use-hire.ts";
import { NewNoteForm } from "./new-note-form.tsx";
import { NoteLine } from "./note-line.tsx";
import { notesChanged, useNotes } from "./use-notes.ts";
import "../abroad/abroad.css";
import "./notes.css";

type Payer = Exclude<Schemas["HireNotes"]["payer"], undefined>;

/** Notes and promises, each with the moment at which it must reappear; and who pays. */
export default function NotesPart({ page }: PartProps) {
  const { id } = page.hire;
  const notes = useNotes(id);
  if (notes.isPending) return <Loading />;
  if (notes.isError) return <FailureNote failure={notes.error} onAgain={() => void notes.refetch()} />;
  const open = notes.data.notes.filter(({ done }) => done === null);
  return (
    <>
      <section className="card stack" aria-labelledby="notes-title">
        <h2 id="notes-title">{t("notes.title", { n: open.length })}</h2>
        {notes.data.notes.length === 0 ? (
          <Empty>{t("notes.none")}</Empty>
        ) : (
          <ul className="notes">
            {notes.data.notes.map((note) => (
              <NoteLine key={note.id} note={note} />
            ))}
          </ul>
        )}
        <NewNoteForm id={id} people={notes.data.people} />
      </section>
      {notes.data.payer !== undefined && (
        <PayerCard id={id} payer={notes.data.payer} version={notes.data.payerVersion} />
      )}
    </>
  );
}

interface PayerProps {
  readonly id: string;
  readonly payer: Payer;
  readonly version: number;
}

const NOBODY = { name: "", email: "", address: "" };

/** Who pays, where it is not the hirer. */
function PayerCard({ id, payer, version }: PayerProps) {
  const draft = useGuardedDraft(`payer.${id}`, { value: { ...NOBODY, ...payer }, version });
  const { value, set, basedOn } = draft;
  const save = useMutation({
    mutationFn: (next: Payer) =>
      sendOrRead(
        () =>
          take(
            client.PUT("/api/hires/{id}/payer", {
              params: { path: { id }, query: { basedOn } },
              body: { payer: next },
            }),
          ),
        () => queries.invalidateQueries({ queryKey: ["notes", id] }),
      ),
    onSuccess: (notes) => {
      draft.done();
      notesChanged(id, notes);
    },
  });
  const at = (field: string) => problemAt(save.error, `payer.${field}`);
  const { address, ...rest } = value;
  return (
    <section className="card sheet" aria-labelledby="payer-title">
      <h2 id="payer-title">{t("notes.payer")}</h2>
      <p className="quiet">{payer === null ? t("notes.payerIsHirer") : t("notes.payerNote")}</p>
      <details open={payer !== null || draft.isDirty}>
        <summary className="fold">{t("notes.payerOther")}</summary>
        <div className="sheet-fields">
          <TextField
            label={t("notes.payerName")}
            value={value.name}
            onChange={(name) => set({ ...value, name })}
            error={at("name")}
          />
          <TextField
            label={t("notes.payerMail")}
            type="email"
            value={value.email}
            onChange={(email) => set({ ...value, email })}
            error={at("email")}
          />
          <TextField
            label={t("notes.payerAddress")}
            value={address}
            onChange={(next) => set({ ...value, address: next })}
            error={at("address")}
          />
        </div>
        <KeptMeanwhile
          draft={draft}
          failure={save.error}
          onSettled={save.reset}
          shown={["payer.name", "payer.email", "payer.address"]}
        />
        <div className="row">
          <Button
            onPress={() => save.mutate(address.trim() === "" ? rest : value)}
            isPending={save.isPending}
            isDisabled={!draft.isDirty || value.name.trim() === "" || value.email.trim() === ""}
          >
            {t("notes.keepPayer")}
          </Button>
          {payer !== null && (
            <Button look="quiet" onPress={() => save.mutate(null)}>
              {t("notes.payerBack")}
            </Button>
          )}
          <DropDraft draft={draft} />
        </div>
      </details>
    </section>
  );
}
