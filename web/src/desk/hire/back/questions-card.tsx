import { useMutation, useQuery } from "@tanstack/react-query";
import { useState } from "react";
import { client, type Schemas } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { Button, ChoiceField, TextField } from "../../../parts/index.ts";
import { dateText, figureText, has, say, t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import { queries } from "../../query-client.ts";
import { useSignedIn } from "../../session.ts";
import { sendSteps } from "../handover/send-records.ts";
import type { PartProps } from "../use-hire.ts";
import { Photos } from "./photos.tsx";

type Question = Schemas["ReadingQuestion"];
type Read = Question["entries"][number];

const nameOf = (checkId: string): string => (has(`check.${checkId}`) ? say(`check.${checkId}`) : checkId);
const valueText = ({ value, unit }: Read): string =>
  unit === null ? String(value) : figureText({ value, unit });

/** Two tablets, two readings: both stay, and whoever signs says which one holds. */
export function QuestionsCard({ page }: PartProps) {
  const { id } = page.hire;
  const found = useQuery({
    queryKey: ["differences", id, "questions"],
    queryFn: () => take(client.GET("/api/hires/{id}/questions", { params: { path: { id } } })),
  });
  const questions = found.data?.questions ?? [];
  if (questions.length === 0) return <FailureNote failure={found.error} />;
  return (
    <section className="card conditions" aria-labelledby="questions-title">
      <h2 id="questions-title">{t("settling.questions.title", { n: questions.length })}</h2>
      <p className="quiet">{t("settling.questions.lead")}</p>
      <ul>
        {questions.map((question) => (
          <li key={`${question.when}.${question.checkId}`} className="line-box">
            <OneQuestion page={page} question={question} />
          </li>
        ))}
      </ul>
    </section>
  );
}

function OneQuestion({ page, question }: PartProps & { readonly question: Question }) {
  const { user } = useSignedIn();
  const [holds, setHolds] = useState<string | null>(null);
  const [why, setWhy] = useState("");
  const { id, vehicle } = page.hire;
  const answer = useMutation({
    mutationFn: () =>
      sendSteps({ hireId: id, vehicleId: vehicle?.id ?? null }, [
        {
          kind: "answer",
          content: {
            about: question.entries[0]?.about ?? question.checkId,
            direction: question.when,
            among: question.entries.map((entry) => ({ id: entry.id, hash: entry.hash })),
            holds: holds ?? "",
            by: user.name,
            why: why.trim(),
          },
        },
      ]),
    onSuccess: () => {
      for (const kind of ["differences", "settlement", "hire"])
        void queries.invalidateQueries({ queryKey: [kind, id] });
    },
  });
  return (
    <div className="stack-tight">
      <h3>{nameOf(question.checkId)}</h3>
      <div className="evidence">
        {question.entries.map((entry) => (
          <div key={entry.id} className="evidence-side">
            <strong>{valueText(entry)}</strong>
            <span className="quiet">
              {t("settling.questions.read", {
                at: dateText(entry.at, "dayTime"),
                device: entry.deviceId.slice(0, 12),
              })}
            </span>
            <Photos hashes={entry.photographs} label={nameOf(question.checkId)} />
          </div>
        ))}
      </div>
      <ChoiceField
        label={t("settling.questions.which")}
        value={holds}
        options={question.entries.map((entry) => ({ value: entry.id, label: valueText(entry) }))}
        onChange={setHolds}
      />
      <TextField label={t("settling.questions.why")} value={why} onChange={setWhy} />
      <FailureNote failure={answer.error} />
      <div>
        <Button
          look="main"
          isPending={answer.isPending}
          isDisabled={holds === null || why.trim() === ""}
          onPress={() => answer.mutate()}
        >
          {t("settling.questions.keep")}
        </Button>
      </div>
    </div>
  );
}
