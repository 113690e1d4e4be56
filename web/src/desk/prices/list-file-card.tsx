import { useMutation } from "@tanstack/react-query";
import { useState } from "react";
import { client, type Schemas } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { Button, ChoiceField, Loading } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { EncodingQuestion, FileChoice } from "../import/file-choice.tsx";
import { Rejected } from "../import/import-answer.tsx";
import { readBase64 } from "../import/read-file.ts";
import type { PieceProps } from "./piece-props.ts";
import { kitLine, repairLine, withFile } from "./price-draft.ts";

const LISTS = ["kit", "repairs"] as const;
type List = (typeof LISTS)[number];
type Answer = Schemas["PriceListAnswer"];

/** A file in hand, and how a person says it is written. */
interface InHand {
  readonly list: List;
  readonly name: string;
  readonly file: string;
  readonly encoding?: "windows-1252";
}

const COLUMNS: Readonly<Record<List, { readonly needed: string; readonly other: string }>> = {
  kit: { needed: "thing, newValue, lifeYears, leastPercent", other: "currency" },
  repairs: { needed: "thing, damage, price, work", other: "upToMm, currency, lifeYears, leastPercent" },
};

function useReading() {
  return useMutation({
    mutationFn: ({ list, name: _, ...body }: InHand) =>
      take(client.POST("/api/terms/prices/lists/{list}", { params: { path: { list } }, body })),
  });
}

/** The lists as files: saved for a spreadsheet, and read from one on to the lists above, where they are looked at before they are kept. */
export function ListFileCard({ value, change, mayWrite }: PieceProps) {
  const [list, setList] = useState<List>("kit");
  const [hand, setHand] = useState<InHand | null>(null);
  const [taken, setTaken] = useState<number | null>(null);
  const reading = useReading();
  const look = (next: InHand) => {
    setHand(next);
    setTaken(null);
    reading.mutate(next);
  };
  const choose = async (file: File) => look({ list, name: file.name, file: await readBase64(file) });
  const takeOver = ({ kit, repairs }: Answer) => {
    const lines = {
      kit: Object.entries(kit).map(([id, each]) => kitLine(id, each)),
      repairs: repairs.map(repairLine),
    };
    change({ kit: withFile(value.kit, lines.kit), repairs: withFile(value.repairs, lines.repairs) });
    setTaken(lines.kit.length + lines.repairs.length);
  };
  return (
    <section className="card stack" aria-labelledby="list-file-title">
      <h2 id="list-file-title">{t("firmPrices.file.title")}</h2>
      <div className="row">
        {LISTS.map((each) => (
          <a key={each} className="button" href={`/api/terms/prices/lists/${each}`} download>
            {t("firmPrices.file.save", { list: each })}
          </a>
        ))}
      </div>
      {mayWrite && (
        <>
          <p className="quiet">{t("firmPrices.file.lead")}</p>
          <ChoiceField
            label={t("firmPrices.file.which")}
            value={list}
            options={LISTS.map((each) => ({ value: each, label: t("firmPrices.file.list", { list: each }) }))}
            onChange={setList}
          />
          <p>{t("import.columnsOf", COLUMNS[list])}</p>
          <p className="quiet">{t("firmPrices.file.cells")}</p>
          <FileChoice name={hand?.name ?? null} onFile={(file) => void choose(file)} />
          {reading.isPending && <Loading what={t("import.looking")} />}
          <FailureNote failure={reading.error} />
          {hand !== null && reading.data !== undefined && (
            <Read
              answer={reading.data}
              taken={taken}
              onEncoding={() => look({ ...hand, encoding: "windows-1252" })}
              onTake={takeOver}
            />
          )}
        </>
      )}
    </section>
  );
}

interface ReadProps {
  readonly answer: Answer;
  /** lines that were put on the lists; null before */
  readonly taken: number | null;
  readonly onEncoding: () => void;
  readonly onTake: (answer: Answer) => void;
}

function Read({ answer, taken, onEncoding, onTake }: ReadProps) {
  const { question, ignored, kit, repairs, rejected } = answer;
  if (question !== null) return <EncodingQuestion sample={question} onYes={onEncoding} />;
  const n = Object.keys(kit).length + repairs.length;
  return (
    <div className="stack" role="status">
      {ignored.length > 0 && <p className="quiet">{t("import.ignored", { columns: ignored.join(", ") })}</p>}
      {rejected.length > 0 && (
        <div className="stack-tight">
          <h3>{t("import.rejected", { n: rejected.length })}</h3>
          <Rejected rejected={rejected} />
        </div>
      )}
      {taken !== null ? (
        <p>{t("firmPrices.file.taken", { n: taken })}</p>
      ) : (
        n > 0 && (
          <div className="row">
            <Button look="main" onPress={() => onTake(answer)}>
              {t("firmPrices.file.take", { n })}
            </Button>
          </div>
        )
      )}
    </div>
  );
}
