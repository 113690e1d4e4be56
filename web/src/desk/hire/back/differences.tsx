import type { ConditionResult, Difference } from "@setfair/engine";
import { useQuery } from "@tanstack/react-query";
import { client } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { Empty, FindingsList, Loading } from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import type { PartProps } from "../use-hire.ts";
import { DifferenceLine } from "./difference-line.tsx";
import { QuestionsCard } from "./questions-card.tsx";
import { SecondLookCard } from "./second-look-card.tsx";

/** What came back otherwise than it went, with both sides of the evidence; decided here, each with its reason. */
export function Differences({ page }: PartProps) {
  const { id, stage, vehicle } = page.hire;
  const found = useQuery({
    queryKey: ["differences", id],
    queryFn: () => take(client.GET("/api/hires/{id}/differences", { params: { path: { id } } })),
  });
  const result = found.data?.result as ConditionResult | undefined;
  // what nobody looked at is never said to be as it was
  const isLookedAt = result?.missing.length === 0;
  return (
    <>
      {found.data !== undefined && <SecondLookCard look={found.data.secondLook} />}
      <QuestionsCard page={page} />
      <section className="card" aria-labelledby="differences-title">
        <h2 id="differences-title">
          {t("back.differences", { n: found.data?.differences.length ?? 0, seen: isLookedAt ? "yes" : "no" })}
        </h2>
        {found.isPending && <Loading />}
        <FailureNote failure={found.error} />
        {found.data !== undefined && found.data.differences.length === 0 && (
          <Empty>
            {t(
              isLookedAt
                ? "back.noDifferences"
                : page.records.back.started
                  ? "back.notAllSeen"
                  : "back.notSeen",
            )}
          </Empty>
        )}
        <ul>
          {found.data?.differences.map((entry) => (
            <DifferenceLine
              key={entry.id}
              hireId={id}
              vehicleId={vehicle?.id ?? null}
              entry={entry}
              // the server sends the engine's own difference
              difference={entry.difference as Difference}
              canDecide={stage === "returned"}
            />
          ))}
        </ul>
        {result !== undefined && page.records.back.started && (
          <p className="quiet">
            {t("back.alsoSeen", {
              existing: result.existing.length,
              questions: result.questions.length,
              again: result.secondLooks.length,
              missing: result.missing.length,
            })}
          </p>
        )}
        {found.data !== undefined && found.data.findings.length > 0 && (
          <FindingsList findings={found.data.findings} />
        )}
      </section>
    </>
  );
}
