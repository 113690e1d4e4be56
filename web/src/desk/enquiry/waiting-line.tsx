import { useState } from "react";
import { Link, useLocation } from "wouter";
import { client, type Schemas } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { Button, Dialog } from "../../parts/index.ts";
import { dateText, moneyText, t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { useHireAct } from "../hire/use-hire.ts";
import { sendOrRead } from "../meanwhile/use-guarded-draft.ts";
import { queries } from "../query-client.ts";
import { placeOfHire } from "../where.ts";
import { WaitForm } from "./wait-form.tsx";

type Line = Schemas["Waiting"];
type Could = Line["could"][number];

const enquiriesChanged = (): void => void queries.invalidateQueries({ queryKey: ["enquiries"] });

/** One who waits: what they want, and the vehicles that could serve them now, each one step from booked. */
export function WaitingLine({ line, classes }: { readonly line: Line; readonly classes: readonly string[] }) {
  const [isOpen, setOpen] = useState(false);
  const dates = { from: dateText(line.from, "dayTime"), to: dateText(line.to, "dayTime") };
  return (
    <li className="answer stack-tight">
      <div className="row spread">
        <span>
          <Link href={placeOfHire(line.hireId)} className="link-row">
            {line.customer}
          </Link>{" "}
          <a href={`tel:${line.telephone.replaceAll(" ", "")}`} className="nowrap">
            {line.telephone}
          </a>
          <span className="quiet">
            {" "}
            {t("rates.waitsFor", {
              ...dates,
              people: line.people,
              classes: line.classes.length === 0 ? t("rates.anyClass") : line.classes.join(", "),
              flex: line.flexDays,
              since: dateText(line.since, "day"),
            })}
          </span>
        </span>
        <Button look="quiet" onPress={() => setOpen(true)}>
          {t("rates.changeWait")}
        </Button>
      </div>
      {line.could.length === 0 ? (
        <p className="quiet">{t("rates.nothingYet")}</p>
      ) : (
        <ul>
          {line.could.map((could) => (
            <CouldLine key={could.id} line={line} could={could} />
          ))}
        </ul>
      )}
      <Dialog title={t("rates.waitTitle")} isOpen={isOpen} onClose={() => setOpen(false)}>
        <WaitForm
          hireId={line.hireId}
          wait={line}
          version={line.versions.waiting}
          classes={classes}
          onDone={() => {
            setOpen(false);
            enquiriesChanged();
          }}
        />
      </Dialog>
    </li>
  );
}

function CouldLine({ line, could }: { readonly line: Line; readonly could: Could }) {
  const [, go] = useLocation();
  const isMoved = could.from !== line.from || could.to !== line.to;
  const book = useHireAct(
    () =>
      sendOrRead(
        () =>
          take(
            client.POST("/api/hires/{id}/take", {
              params: { path: { id: line.hireId }, query: { basedOn: String(line.versions.hire) } },
              body: { vehicleId: could.id, from: could.from, to: could.to },
            }),
          ),
        async () => enquiriesChanged(),
      ),
    (page) => {
      enquiriesChanged();
      go(placeOfHire(page.hire.id));
    },
  );
  return (
    <li className="could">
      <div className="row spread">
        <span>
          <strong>{could.name}</strong> <span className="quiet nowrap">{could.registration}</span>{" "}
          {isMoved && (
            <span>
              {t("rates.onOtherDays", {
                from: dateText(could.from, "dayTime"),
                to: dateText(could.to, "dayTime"),
              })}
            </span>
          )}{" "}
          {could.price !== null && <strong className="num">{moneyText(could.price)}</strong>}
        </span>
        <Button look="main" onPress={() => book.mutate()} isPending={book.isPending}>
          {t("rates.bookIt", { name: could.name })}
        </Button>
      </div>
      <FailureNote failure={book.error} />
    </li>
  );
}
