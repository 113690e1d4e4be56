import type { Schemas } from "../../api/client.ts";
import { Button, ScrollX } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";

type Answer = Schemas["ImportAnswer"];
/** Rows shown at most: the rest is counted. */
const SHOWN = 200;

/** Rows of a file that are not taken, each with its line, column and what was expected. */
export function Rejected({ rejected }: Pick<Answer, "rejected">) {
  return (
    <ScrollX label={t("import.rejected", { n: rejected.length })}>
      <table className="dense">
        <thead>
          <tr>
            <th>{t("import.line")}</th>
            <th>{t("import.column")}</th>
            <th>{t("import.value")}</th>
            <th>{t("import.expected")}</th>
          </tr>
        </thead>
        <tbody>
          {rejected.slice(0, SHOWN).map(({ line, column, value, expected }) => (
            <tr key={line}>
              <td className="num">{line}</td>
              <td>{column === "" ? t("import.wholeRow") : column}</td>
              <td>{value === "" ? <span className="quiet">{t("import.empty")}</span> : value}</td>
              <td>{expected}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollX>
  );
}

interface ImportAnswerProps {
  readonly answer: Answer;
  readonly onConfirm: () => void;
  readonly isPending: boolean;
}

/** What would happen, each refused row with its reason, and the one act that makes it happen. */
export function ImportAnswer({ answer, onConfirm, isPending }: ImportAnswerProps) {
  const { accepted, rejected, done, ignored, encoding, dateOrder } = answer;
  const more = (n: number) => n > SHOWN && <p className="quiet">{t("import.onlySome", { n: n - SHOWN })}</p>;
  return (
    <div className="stack" role="status">
      {encoding !== null && (
        <p className="quiet">
          {t("import.readAs", {
            encoding: encoding === "utf-8" ? "utf8" : encoding,
            order: dateOrder ?? "none",
          })}{" "}
          {ignored.length > 0 && t("import.ignored", { columns: ignored.join(", ") })}
        </p>
      )}
      {rejected.length > 0 && (
        <div className="stack-tight">
          <h3>{t("import.rejected", { n: rejected.length })}</h3>
          <Rejected rejected={rejected} />
          {more(rejected.length)}
        </div>
      )}
      <div className="stack-tight">
        <h3>{t(done ? "import.acceptedDone" : "import.accepted", { n: accepted.length })}</h3>
        {accepted.length > 0 && (
          <ScrollX label={t("import.accepted", { n: accepted.length })}>
            <table className="dense">
              <tbody>
                {accepted.slice(0, SHOWN).map(({ line, title, text }) => (
                  <tr key={line}>
                    <td className="num quiet">{line}</td>
                    <td>{title}</td>
                    <td className="quiet">{text}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </ScrollX>
        )}
        {more(accepted.length)}
      </div>
      {!done && accepted.length > 0 && (
        <div className="row">
          <Button look="main" onPress={onConfirm} isPending={isPending}>
            {rejected.length === 0
              ? t("import.confirm", { n: accepted.length })
              : t("import.confirmLess", { n: accepted.length, less: rejected.length })}
          </Button>
        </div>
      )}
    </div>
  );
}
