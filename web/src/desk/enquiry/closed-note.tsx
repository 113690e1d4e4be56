import { useQuery } from "@tanstack/react-query";
import { client } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { t } from "../../parts/words.ts";

interface ClosedNoteProps {
  /** civil times `YYYY-MM-DDTHH:MM`, or empty */
  readonly from: string;
  readonly to: string;
}

/** Says where keys would go out or come back while the depot is closed; it is asked for all the same. */
export function ClosedNote({ from, to }: ClosedNoteProps) {
  const depot = useQuery({ queryKey: ["depot"], queryFn: () => take(client.GET("/api/depot")) });
  if (depot.data === undefined) return null;
  const { opens, closes } = depot.data;
  const isClosed = (local: string) =>
    local !== "" && (local.slice(11, 16) < opens || local.slice(11, 16) > closes);
  const ends = [
    ...(isClosed(from) ? [t("known.closedOut", { at: from.slice(11, 16), opens, closes })] : []),
    ...(isClosed(to) ? [t("known.closedBack", { at: to.slice(11, 16), opens, closes })] : []),
  ];
  return ends.length === 0 ? null : (
    <p className="closed-note" role="status">
      {ends.join(" ")}
    </p>
  );
}
