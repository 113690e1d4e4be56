import { useMutation } from "@tanstack/react-query";
import { useState } from "react";
import { client, type Schemas } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { Button, Loading, Problem, SelectField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { queries } from "../query-client.ts";
import { EncodingQuestion, FileChoice } from "./file-choice.tsx";
import { ImportAnswer } from "./import-answer.tsx";
import { MOST_BYTES, readBase64 } from "./read-file.ts";

const KINDS = ["customers", "vehicles", "hires"] as const;
type Kind = (typeof KINDS)[number];
type Answer = Schemas["ImportAnswer"];
type Order = NonNullable<Answer["dateOrder"]>;

const COLUMNS: Readonly<Record<Kind, { readonly needed: string; readonly other: string }>> = {
  customers: { needed: "name, telephone, email", other: "address" },
  vehicles: { needed: "registration, name, bodyStyle", other: "mamKg, firstRegistered" },
  hires: {
    needed: "name, telephone, email, from, to, adults",
    other: "children, dogs, registration, stage",
  },
};

/** A file in hand, and what a person said of it. */
interface InHand {
  readonly name: string;
  readonly file: string;
  readonly encoding?: "windows-1252";
  readonly dateOrder?: Order;
}

function useImport(kind: Kind) {
  return useMutation({
    mutationFn: ({ hand, confirm }: { readonly hand: InHand; readonly confirm: Answer | null }) => {
      const { name: _, ...body } = hand;
      const counts =
        confirm === null
          ? {}
          : { confirm: { accepted: confirm.accepted.length, rejected: confirm.rejected.length } };
      return take(
        client.POST("/api/import/{what}", { params: { path: { what: kind } }, body: { ...body, ...counts } }),
      );
    },
    onSuccess: ({ done }) => {
      if (done) void queries.invalidateQueries();
    },
  });
}

interface QuestionProps {
  readonly question: NonNullable<Answer["question"]>;
  readonly onSaid: (said: Pick<InHand, "encoding" | "dateOrder">) => void;
}

/** What only a person can say: the letters, or the order of day and month. */
function Question({ question, onSaid }: QuestionProps) {
  if (question.what === "encoding")
    return <EncodingQuestion sample={question.sample} onYes={() => onSaid({ encoding: "windows-1252" })} />;
  const title = t("import.askOrder", { sample: question.sample });
  return (
    <div className="stack-tight">
      <p>{title}</p>
      <div className="row">
        {(["dmy", "mdy"] as const).map((order) => (
          <Button key={order} onPress={() => onSaid({ dateOrder: order })}>
            {t("import.order", { order })}
          </Button>
        ))}
      </div>
    </div>
  );
}

/** A list of customers, vehicles or hires: chosen, looked at, then taken in. */
export function ListImport() {
  const [kind, setKind] = useState<Kind>("customers");
  const [hand, setHand] = useState<InHand | null>(null);
  const [tooLarge, setTooLarge] = useState(false);
  const run = useImport(kind);
  const look = (next: InHand) => {
    setHand(next);
    run.mutate({ hand: next, confirm: null });
  };
  const choose = async (file: File) => {
    setTooLarge(file.size > MOST_BYTES);
    if (file.size <= MOST_BYTES) look({ name: file.name, file: await readBase64(file) });
  };
  const { data } = run;
  return (
    <section className="card stack" aria-labelledby="import-title">
      <h2 id="import-title">{t("import.listsIn")}</h2>
      <p className="quiet">{t("import.lead")}</p>
      <SelectField
        label={t("import.what")}
        value={kind}
        options={KINDS.map((value) => ({ value, label: t("import.kind", { kind: value }) }))}
        onChange={(next) => {
          setKind(next);
          setHand(null);
          run.reset();
        }}
      />
      <p>{t("import.columnsOf", COLUMNS[kind])}</p>
      {kind !== "customers" && (
        <p className="quiet">{t(kind === "hires" ? "import.hiresNote" : "import.vehiclesNote")}</p>
      )}
      <p className="quiet">{t("import.limits")}</p>
      <FileChoice name={hand?.name ?? null} onFile={(file) => void choose(file)} />
      {tooLarge && <Problem title={t("import.tooLarge")} />}
      {run.isPending && <Loading what={t("import.looking")} />}
      <FailureNote failure={run.error} />
      {hand !== null && data !== undefined && data.question !== null && (
        <Question question={data.question} onSaid={(said) => look({ ...hand, ...said })} />
      )}
      {hand !== null && data !== undefined && data.question === null && (
        <ImportAnswer
          answer={data}
          isPending={run.isPending}
          onConfirm={() => run.mutate({ hand, confirm: data })}
        />
      )}
    </section>
  );
}
