import { useState } from "react";
import { Failure } from "../../api/failure.ts";
import { Button, ChoiceField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { FailureNote, type FailureNoteProps } from "../failure-note.tsx";
import { changedByText, placeText, valueText } from "./difference-words.ts";
import { type Difference, findDifferences, takeOver } from "./differences.ts";
import { type GuardedDraft, isStale } from "./use-guarded-draft.ts";
import "./meanwhile.css";

interface KeptMeanwhileProps<T> extends FailureNoteProps {
  readonly draft: GuardedDraft<T>;
  /** fields of the draft that are this screen's own, such as where the reader is */
  readonly ownFields?: readonly string[];
  /** the refusal is answered: forgets it */
  readonly onSettled: () => void;
}

/**
 * Stands where a form says why it could not be kept. Where somebody else kept another version meanwhile it shows both
 * side by side, so that a person puts them together; nothing is written over, and nothing typed is lost.
 */
export function KeptMeanwhile<T>({
  draft,
  failure,
  ownFields = [],
  onSettled,
  ...rest
}: KeptMeanwhileProps<T>) {
  const { other } = draft;
  if (other === null) return <FailureNote failure={failure} {...rest} />;
  return (
    // begun again when a third version comes
    <BothVersions
      key={JSON.stringify(other)}
      draft={draft}
      other={other}
      failure={failure}
      ownFields={ownFields}
      onSettled={onSettled}
    />
  );
}

interface BothVersionsProps<T> {
  readonly draft: GuardedDraft<T>;
  readonly other: T;
  readonly failure: unknown;
  readonly ownFields: readonly string[];
  readonly onSettled: () => void;
}

function BothVersions<T>({ draft, other, failure, ownFields, onSettled }: BothVersionsProps<T>) {
  const { base, value } = draft;
  const found = findDifferences(base, value, other).filter(
    ({ path: [first] }) => !ownFields.includes(String(first)),
  );
  const [chosen, choose] = useState<Readonly<Record<string, Whose>>>({});
  const whose = (each: Difference): Whose =>
    chosen[JSON.stringify(each.path)] ?? (each.changedBy === "them" ? "theirs" : "mine");
  // what the server said of who kept it, where the save brought it to light
  const who = failure instanceof Failure && isStale(failure) ? failure.problems[0]?.expected : undefined;
  const end = (act: () => void) => () => {
    act();
    onSettled();
  };
  return (
    <section className="meanwhile stack" aria-label={t("meanwhile.title")}>
      <div role="alert">
        <h3>{t("meanwhile.title")}</h3>
        {who !== undefined && <p>{who}</p>}
        <p>{t("meanwhile.lead")}</p>
      </div>
      <div className="stack">
        {found.map((each) => (
          <Place
            key={JSON.stringify(each.path)}
            difference={each}
            wholes={[value, other, base]}
            whose={whose(each)}
            onChoose={(next) => choose({ ...chosen, [JSON.stringify(each.path)]: next })}
          />
        ))}
      </div>
      <div className="row">
        <Button
          look="main"
          onPress={end(() =>
            draft.goOn(
              takeOver(
                value,
                other,
                found.filter((each) => whose(each) === "theirs"),
              ),
            ),
          )}
        >
          {t("meanwhile.together")}
        </Button>
        <Button onPress={end(() => draft.goOn(value))}>{t("meanwhile.allMine")}</Button>
        <Button onPress={end(draft.done)}>{t("meanwhile.allTheirs")}</Button>
      </div>
      <p className="quiet">{t("meanwhile.thenKeep")}</p>
    </section>
  );
}

type Whose = "mine" | "theirs";

interface PlaceProps {
  readonly difference: Difference;
  readonly wholes: readonly unknown[];
  readonly whose: Whose;
  readonly onChoose: (whose: Whose) => void;
}

function Place({ difference, wholes, whose, onChoose }: PlaceProps) {
  const { path, mine, theirs } = difference;
  return (
    <ChoiceField<Whose>
      label={placeText(path, wholes)}
      note={changedByText(difference)}
      value={whose}
      options={[
        { value: "mine", label: t("meanwhile.mine", { what: valueText(mine, path) }) },
        { value: "theirs", label: t("meanwhile.theirs", { what: valueText(theirs, path) }) },
      ]}
      onChange={onChoose}
    />
  );
}
