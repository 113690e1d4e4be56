import {
  type ConditionResult,
  foundTooLate,
  readSecondLook,
  type SecondLook,
  type WalkRound,
  windowsOf,
} from "@setfair/engine";
import { type HireData, partOf } from "./hire-data.ts";
import { directionOf, signaturesOf, wholeRecords } from "./record-facts.ts";

/** When the walk-round back was first signed for its condition; null while nobody has. */
function signedBackAt({ records }: HireData): string | null {
  const signed = signaturesOf(records).filter(
    ({ purpose, direction }) => purpose === "condition" && direction === "back",
  );
  return signed.map(({ at }) => at).sort()[0] ?? null;
}

/** What is still to be looked at again after the wash, and until when. */
export function secondLookOf(
  data: HireData,
  { secondLooks }: Pick<ConditionResult, "secondLooks">,
): SecondLook {
  const from = signedBackAt(data) ?? partOf(data, "readiness")?.keysBackAt ?? data.now;
  const { secondLookHours } = windowsOf(data.terms?.document ?? null);
  return readSecondLook({ secondLooks, from, hours: secondLookHours, now: data.now });
}

/** Ids of differences that were found after the return was signed and outside its second look. */
export function lateOf(data: HireData, condition: ConditionResult, walkRound: WalkRound): readonly string[] {
  const signedAt = signedBackAt(data);
  const back = wholeRecords(data.records).filter((record) => directionOf(record) === "back");
  const open = new Set(
    back
      .filter(({ kind, content, deviceTime }) => {
        const saw = content.outcome ?? content.saw;
        return kind === "look" && saw === "tooWetOrDirty" && deviceTime <= (signedAt ?? "");
      })
      .map(({ content }) => String(content.checkId ?? content.about)),
  );
  const keptOpen = walkRound.steps
    .flatMap(({ checks }) => checks)
    .filter(({ id }) => open.has(id))
    .map(({ id, part, view }) => ({ checkId: id, part: part ?? null, view }));
  return foundTooLate({
    differences: condition.differences,
    seen: back.map(({ id, deviceTime }) => ({ recordId: id, at: deviceTime })),
    signedAt,
    keptOpen,
    until: secondLookOf(data, condition).until,
  });
}
