import { useState } from "react";
import { client } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { Button } from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import { useSignedIn } from "../../session.ts";
import { AskDialog } from "./ask-dialog.tsx";
import { type CardProps, field } from "./entry-parts.ts";
import { LineTalk, talkAbout } from "./line-talk.tsx";

interface NoticeTalkProps extends CardProps {
  /** as hirer and desk speak of it */
  readonly lineId: string;
  readonly name: string;
}

/** What hirer and desk said of a fine or a toll, and the desk's answer. */
export function NoticeTalk({ hireId, state, lineId, name }: NoticeTalkProps) {
  const { may } = useSignedIn();
  const [asks, setAsks] = useState<"reply" | "withdraw" | null>(null);
  const talk = talkAbout([lineId], state.entries);
  const last = talk.findLast(({ kind }) => kind === "accept" || kind === "dispute");
  if (last === undefined) return null;
  const isTakenBack = talk.some(({ kind }) => kind === "withdraw");
  const acts = isTakenBack ? (["reply"] as const) : (["reply", "withdraw"] as const);
  return (
    <>
      {last.kind === "dispute" && !isTakenBack && (
        <strong className="disputed">{t("settling.notice.disputed")}</strong>
      )}
      <LineTalk talk={talk} />
      {may.includes("hire.settle") && (
        <div className="row line-acts">
          {acts.map((act) => (
            <Button
              key={act}
              look="quiet"
              onPress={() => setAsks(act)}
              aria-label={t(`settling.notice.${act}To`, { name })}
            >
              {t(`settling.notice.${act}`)}
            </Button>
          ))}
        </div>
      )}
      {asks !== null && (
        <AskDialog
          hireId={hireId}
          draft={`${asks}.${lineId}`}
          title={t(`settling.notice.${asks}To`, { name })}
          lead={t(`settling.notice.${asks}Lead`)}
          fields={[field("text", { kind: "text", lines: 3 })]}
          act={asks === "withdraw" ? t("settling.notice.withdraw") : t("settling.send.reply")}
          send={(entered) =>
            take(
              client.POST("/api/hires/{id}/settlement/replies", {
                params: { path: { id: hireId } },
                body: { lineId, answer: asks, text: entered.text("text") },
              }),
            )
          }
          onClose={() => setAsks(null)}
        />
      )}
    </>
  );
}
