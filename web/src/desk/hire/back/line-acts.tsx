import type { SettlementLine } from "@setfair/engine";
import { useState } from "react";
import { client, type Schemas } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { Button } from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import { useSignedIn } from "../../session.ts";
import { AskDialog, type Asked, type Entered } from "./ask-dialog.tsx";
import type { SettlementState } from "./use-settlement.ts";

type Note = Schemas["SettlementNote"];
type Act = "cost" | "age" | "awaiting" | "second" | "reply" | "mended";

interface LineActsProps {
  readonly hireId: string;
  readonly line: SettlementLine;
  readonly state: SettlementState;
  readonly name: string;
}

/** Which acts a line asks for now: what cannot be done any more, or makes no sense of it, is not offered. */
export function actsOf(line: SettlementLine, isShown: boolean): readonly Act[] {
  const isMark = line.evidence.differenceId?.startsWith("mark:") === true;
  const isCharged = line.amount.pence > 0;
  const isTheirs = isCharged || line.because === "noTariff" || line.because === "awaitsCost";
  const mayCost = isMark && (isTheirs || line.because === "needsSecondSignature");
  return [
    ...(mayCost ? (["cost"] as const) : []),
    ...(mayCost && !isShown ? (["age"] as const) : []),
    ...(isMark && !isShown && (line.because === "noTariff" || line.because === "awaitsCost")
      ? (["awaiting"] as const)
      : []),
    ...(line.because === "needsSecondSignature" ? (["second"] as const) : []),
    ...(isShown && (isCharged || line.disputed) ? (["reply"] as const) : []),
    ...(isMark && isShown ? (["mended"] as const) : []),
  ];
}

/** What the desk can do with one line of the settlement. */
export function LineActs({ hireId, line, state, name }: LineActsProps) {
  const { may } = useSignedIn();
  const [open, setOpen] = useState<Act | null>(null);
  const acts = may.includes("hire.settle") ? actsOf(line, state.frozenAt !== null) : [];
  if (acts.length === 0) return null;
  return (
    <>
      <div className="row line-acts">
        {acts.map((act) => (
          <Button
            key={act}
            look="quiet"
            onPress={() => setOpen(act)}
            aria-label={t("settling.actOf", { act: t(`settling.act.${act}`), name })}
          >
            {t(`settling.act.${act}`)}
          </Button>
        ))}
      </div>
      {open !== null && (
        <ActDialog act={open} hireId={hireId} line={line} name={name} onClose={() => setOpen(null)} />
      )}
    </>
  );
}

interface ActDialogProps extends Pick<LineActsProps, "hireId" | "line" | "name"> {
  readonly act: Act;
  readonly onClose: () => void;
}

function ActDialog({ act, hireId, line, name, onClose }: ActDialogProps) {
  const { today } = useSignedIn();
  return (
    <AskDialog
      hireId={hireId}
      draft={`${act}.${line.id}`}
      title={t("settling.actOf", { act: t(`settling.act.${act}`), name })}
      lead={t(`settling.lead.${act}`)}
      fields={fieldsOf(act, today)}
      act={t(`settling.send.${act}`)}
      send={(entered) => send(act, hireId, line, entered)}
      onClose={onClose}
    />
  );
}

function fieldsOf(act: Act, today: string): readonly Asked[] {
  const reason: Asked = { id: "reason", kind: "text", label: t("settling.field.reason") };
  switch (act) {
    case "cost":
      return [
        {
          id: "kind",
          kind: "choice",
          label: t("settling.field.costKind"),
          start: "estimate",
          options: (["estimate", "invoice"] as const).map((value) => ({
            value,
            label: t("settling.said", { kind: value }),
          })),
        },
        { id: "partsPence", kind: "pounds", label: t("settling.field.parts") },
        { id: "labourPence", kind: "pounds", label: t("settling.field.labour") },
        {
          id: "reference",
          kind: "text",
          label: t("settling.field.reference"),
          note: t("settling.field.referenceNote"),
        },
        { id: "photographs", kind: "photographs", label: t("settling.field.paper"), optional: true },
      ];
    case "age":
      return [
        {
          id: "ageYears",
          kind: "number",
          unit: t("settling.years"),
          label: t("settling.field.age"),
          max: 60,
        },
        { ...reason, label: t("settling.field.ageHow") },
      ];
    case "awaiting":
      return [{ id: "mostPence", kind: "pounds", label: t("settling.field.most") }, reason];
    case "reply":
      return [
        {
          id: "answer",
          kind: "choice",
          label: t("settling.field.answer"),
          start: "reply",
          options: (["reply", "withdraw"] as const).map((value) => ({
            value,
            label: t(`settling.answer.${value}`),
          })),
        },
        { id: "text", kind: "text", lines: 3, label: t("settling.field.text") },
      ];
    case "mended":
      return [
        { id: "on", kind: "date", label: t("settling.field.mendedOn"), start: today },
        { id: "who", kind: "text", label: t("settling.field.mendedBy") },
      ];
    default:
      return [reason];
  }
}

function send(act: Act, id: string, line: SettlementLine, entered: Entered): Promise<SettlementState> {
  const params = { path: { id } };
  const differenceId = line.evidence.differenceId ?? line.id;
  const reason = entered.text("reason");
  const note = (body: Note) => take(client.POST("/api/hires/{id}/settlement/notes", { params, body }));
  switch (act) {
    case "cost": {
      const kind = entered.text("kind") === "invoice" ? "invoice" : "estimate";
      const body = {
        differenceId,
        kind,
        partsPence: entered.pence("partsPence"),
        labourPence: entered.pence("labourPence"),
        reference: entered.text("reference"),
        photographs: entered.photographs("photographs"),
      } as const;
      return take(client.POST("/api/hires/{id}/settlement/costs", { params, body }));
    }
    case "age":
      return note({ kind: "age", differenceId, ageYears: entered.number("ageYears"), reason });
    case "awaiting":
      return note({ kind: "awaiting", differenceId, mostPence: entered.pence("mostPence"), reason });
    case "mended":
      return note({ kind: "mended", differenceId, on: entered.text("on"), who: entered.text("who") });
    case "second":
      return take(
        client.POST("/api/hires/{id}/settlement/second", { params, body: { differenceId, reason } }),
      );
    default: {
      const answer = entered.text("answer") === "withdraw" ? "withdraw" : "reply";
      const body = { lineId: line.id, answer, text: entered.text("text") } as const;
      return take(client.POST("/api/hires/{id}/settlement/replies", { params, body }));
    }
  }
}
