import { FileTrigger } from "react-aria-components";
import { Button } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";

interface FileChoiceProps {
  /** name of the file in hand; null before one is chosen */
  readonly name: string | null;
  readonly onFile: (file: File) => void;
}

/** Chooses a file of comma-separated values and says which one is in hand. */
export function FileChoice({ name, onFile }: FileChoiceProps) {
  const choose = (files: FileList | null) => {
    const file = files?.[0];
    if (file !== undefined) onFile(file);
  };
  return (
    <div className="row">
      <FileTrigger acceptedFileTypes={[".csv", "text/csv", ".txt"]} onSelect={choose}>
        <Button>{t("import.choose")}</Button>
      </FileTrigger>
      {name !== null && <span className="quiet">{t("import.file", { name })}</span>}
    </div>
  );
}

interface EncodingQuestionProps {
  /** a line of the file, read as Windows-1252 */
  readonly sample: string;
  readonly onYes: () => void;
}

/** What only a person can say of a file that is not UTF-8: whether its letters are right. */
export function EncodingQuestion({ sample, onYes }: EncodingQuestionProps) {
  return (
    <div className="stack-tight">
      <p>{t("import.askEncoding")}</p>
      <p className="import-sample">{sample}</p>
      <div className="row">
        <Button onPress={onYes}>{t("import.encodingYes")}</Button>
      </div>
      <p className="quiet">{t("import.encodingNo")}</p>
    </div>
  );
}
