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
  const [isOpen, setOpen] = useState(false);
  const talk = talkAbout([lineId], state.entries);
  const last = talk.findLast(({ kind }) => kind === "accept" || kind === "dispute");
  if (last === undefined) return null;
  return (
    <>
      {last.kind === "dispute" && <strong className="disputed">{t("settling.notice.disputed")}</strong>}
      <LineTalk talk={talk} />
      {may.includes("hire.settle") && (
        <div className="row line-acts">
          <Button
            look="quiet"
            onPress={() => setOpen(true)}
            aria-label={t("settling.notice.replyTo", { name })}
          >
            {t("settling.notice.reply")}
          </Button>
        </div>
      )}
      {isOpen && (
        <AskDialog
          hireId={hireId}
          draft={`reply.${lineId}`}
          title={t("settling.notice.replyTo", { name })}
          lead={t("settling.notice.replyLead")}
          fields={[field("text", { kind: "text", lines: 3 })]}
          act={t("settling.send.reply")}
          send={(entered) =>
            take(
              client.POST("/api/hires/{id}/settlement/replies", {
                params: { path: { id: hireId } },
                body: { lineId, answer: "reply", text: entered.text("text") },
              }),
            )
          }
          onClose={() => setOpen(false)}
        />
      )}
    </>
  );
}
