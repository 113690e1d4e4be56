import { useMutation } from "@tanstack/react-query";
import { type ReactNode, useState } from "react";
import { Button, Dialog, SignatureField, type Stroke, TextField } from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import { queries } from "../../query-client.ts";
import { type Signing, sendSigning } from "./send-records.ts";

export interface SignDialogProps {
  readonly title: string;
  readonly signing: Omit<Signing, "signer" | "strokes">;
  readonly signer: string;
  readonly onClose: () => void;
  readonly children?: ReactNode;
}

/** Shows the text, takes the name and the signature, and keeps both with what they cover. */
export function SignDialog({ title, signing, signer, onClose, children }: SignDialogProps) {
  const [name, setName] = useState(signer);
  const [strokes, setStrokes] = useState<readonly Stroke[]>([]);
  const send = useMutation({
    mutationFn: () => sendSigning({ ...signing, signer: name.trim(), strokes }),
    onSuccess: () => {
      void queries.invalidateQueries({ queryKey: ["hire", signing.hireId] });
      void queries.invalidateQueries({ queryKey: ["briefing", signing.hireId] });
      void queries.invalidateQueries({ queryKey: ["today"] });
      onClose();
    },
  });
  return (
    <Dialog title={title} isOpen wide onClose={onClose}>
      {children ?? <Paper text={signing.shown} title={title} />}
      <TextField
        label={t("sign.name")}
        value={name}
        onChange={setName}
        error={name.trim() === "" ? t("sign.nameNeeded") : undefined}
      />
      <SignatureField label={t("sign.label", { name })} onChange={setStrokes} />
      <FailureNote failure={send.error} />
      <Button
        look="main"
        onPress={() => send.mutate()}
        isPending={send.isPending}
        isDisabled={strokes.length === 0 || name.trim() === ""}
      >
        {t(send.isPending ? "desk.sending" : "sign.send")}
      </Button>
    </Dialog>
  );
}

function Paper({ text, title }: { readonly text: string; readonly title: string }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a long text scrolls, so the keyboard must reach it
    <section className="paper" aria-label={title} tabIndex={0}>
      {text}
    </section>
  );
}
