import { useQuery } from "@tanstack/react-query";
import { useState } from "react";
import { client, type Schemas } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { Button, Loading } from "../../parts/index.ts";
import { dateText, t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { useSignedIn } from "../session.ts";
import { PassKeysDialog } from "./pass-keys-dialog.tsx";
import "./custody.css";

type Line = Schemas["Custody"]["lines"][number];

interface CustodyCardProps {
  readonly vehicleId: string;
  /** only what touches this hire: from the keys before it to the keys after it */
  readonly hireId?: string;
}

/** Lines of a hire, with the one that follows it: who had the keys until somebody looked at it. */
export function linesOfHire(lines: readonly Line[], hireId: string): readonly Line[] {
  const newest = lines.findIndex((line) => line.hireId === hireId);
  const oldest = lines.findLastIndex((line) => line.hireId === hireId);
  return newest === -1 ? [] : lines.slice(Math.max(0, newest - 1), oldest + 2);
}

/** Lines that are shown without asking. */
const AT_ONCE = 5;
const keyOf = ({ at, holder, recordId, hireId }: Line): string => `${at}.${holder}.${recordId ?? hireId}`;

function CustodyLine({ line }: { readonly line: Line }) {
  return (
    <li className="custody-line">
      <div className="row spread">
        <strong>{t("settling.custody.line", { holder: line.holder, who: line.who })}</strong>
        <span className="quiet">
          {line.until === null
            ? t("settling.custody.since", { at: dateText(line.at, "dayTime") })
            : t("settling.custody.fromTo", {
                at: dateText(line.at, "dayTime"),
                until: dateText(line.until, "dayTime"),
              })}
        </span>
      </div>
      {line.note !== null && <div>{line.note}</div>}
      <div className="quiet">
        {t("settling.custody.seen", {
          marks: line.marks,
          photographs: line.photographs,
          readings: line.readings,
        })}
      </div>
    </li>
  );
}

/** Who had the keys, from when, and what was recorded meanwhile; newest first. */
export function CustodyCard({ vehicleId, hireId }: CustodyCardProps) {
  const { may } = useSignedIn();
  const [isOpen, setOpen] = useState(false);
  const custody = useQuery({
    queryKey: ["custody", vehicleId],
    queryFn: () => take(client.GET("/api/vehicles/{id}/custody", { params: { path: { id: vehicleId } } })),
  });
  const all = custody.data?.lines ?? [];
  const lines = hireId === undefined ? all.slice(0, 30) : linesOfHire(all, hireId);
  return (
    <section className="card stack-tight" aria-labelledby="custody-title">
      <div className="row spread">
        <h2 id="custody-title">{t("settling.custody.title")}</h2>
        {may.includes("record.write") && (
          <Button onPress={() => setOpen(true)}>{t("settling.custody.open")}</Button>
        )}
      </div>
      {custody.isPending && <Loading />}
      <FailureNote failure={custody.error} onAgain={() => void custody.refetch()} />
      {custody.data !== undefined && lines.length === 0 && (
        <p className="quiet">{t("settling.custody.none")}</p>
      )}
      <ul>
        {lines.slice(0, AT_ONCE).map((line) => (
          <CustodyLine key={keyOf(line)} line={line} />
        ))}
      </ul>
      {lines.length > AT_ONCE && (
        <details>
          <summary className="fold">{t("settling.custody.before", { n: lines.length - AT_ONCE })}</summary>
          <ul>
            {lines.slice(AT_ONCE).map((line) => (
              <CustodyLine key={keyOf(line)} line={line} />
            ))}
          </ul>
        </details>
      )}
      {isOpen && <PassKeysDialog vehicleId={vehicleId} onClose={() => setOpen(false)} />}
    </section>
  );
}
