import { checkOpening } from "@setfair/engine";
import { useQuery } from "@tanstack/react-query";
import { client } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { findingText, t } from "../../parts/words.ts";
import "./enquiry.css";

interface ClosedNoteProps {
  /** civil times `YYYY-MM-DDTHH:MM`, or empty */
  readonly from: string;
  readonly to: string;
}

/** Says where keys would go out or come back while the depot is closed; it is asked for all the same. */
export function ClosedNote({ from, to }: ClosedNoteProps) {
  const depot = useQuery({ queryKey: ["depot"], queryFn: () => take(client.GET("/api/depot")) });
  if (depot.data === undefined) return null;
  const { hours } = depot.data;
  const isTime = (local: string) => local.length === "2026-01-01T00:00".length;
  const found = [
    ...(isTime(from) ? checkOpening({ hours, from, to: from }).filter(isOut) : []),
    ...(isTime(to) ? checkOpening({ hours, from: to, to }).filter((each) => !isOut(each)) : []),
  ];
  return found.length === 0 ? null : (
    <p className="closed-note" role="status">
      {found.map(findingText).join(" ")} {t("opening.askedLater")}
    </p>
  );
}

const isOut = ({ code }: { readonly code: string }): boolean => code === "diary.closedOut";
