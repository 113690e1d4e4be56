import { type ReactNode, useState } from "react";
import { Button } from "../../../parts/index.ts";
import { dateText, t } from "../../../parts/words.ts";
import { useSignedIn } from "../../session.ts";
import { AskDialog, type AskDialogProps } from "./ask-dialog.tsx";
import { Photos } from "./photos.tsx";
import { type Entry, hashesIn } from "./use-settlement.ts";

interface EntriesCardProps {
  readonly id: string;
  readonly title: string;
  readonly lead: string;
  readonly entries: readonly Entry[];
  /** what one entry says; its first line is its head */
  readonly sayEntry: (entry: Entry) => readonly [head: string, rest: string];
  /** who may enter one */
  readonly act: "hire.settle" | "hire.write";
  /** null where none can be entered now, with the reason in `lead` */
  readonly dialog: Omit<AskDialogProps, "onClose" | "draft"> | null;
  readonly open: string;
  /** what stands under one entry */
  readonly under?: (entry: Entry, head: string) => ReactNode;
}

/** Entries of one kind with who made them and when, and the way to another. */
export function EntriesCard(props: EntriesCardProps) {
  const { id, title, lead, entries, sayEntry, act, dialog, open, under } = props;
  const { may } = useSignedIn();
  const [isOpen, setOpen] = useState(false);
  return (
    <section className="entries" aria-labelledby={`${id}-title`}>
      <div className="row spread">
        <h3 id={`${id}-title`}>{title}</h3>
        {dialog !== null && may.includes(act) && <Button onPress={() => setOpen(true)}>{open}</Button>}
      </div>
      <p className="quiet">{lead}</p>
      {entries.length > 0 && (
        <ul>
          {entries.map((entry) => {
            const [head, rest] = sayEntry(entry);
            return (
              <li key={entry.id} className="sign-line">
                <div className="row spread">
                  <strong>{head}</strong>
                  <span className="quiet">
                    {t("settling.saidBy", {
                      by: entry.by ?? t("settling.hirer"),
                      at: dateText(entry.at, "fullTime"),
                    })}
                  </span>
                </div>
                {rest !== "" && <div>{rest}</div>}
                {hashesIn(entry, "photographs").length > 0 && (
                  <Photos hashes={hashesIn(entry, "photographs")} label={head} small />
                )}
                {under?.(entry, head)}
              </li>
            );
          })}
        </ul>
      )}
      {isOpen && dialog !== null && <AskDialog {...dialog} draft={id} onClose={() => setOpen(false)} />}
    </section>
  );
}
