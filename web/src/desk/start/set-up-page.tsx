import { WEEKDAYS } from "@setfair/engine";
import { useMutation, useQuery } from "@tanstack/react-query";
import { type FormEvent, useState } from "react";
import { useLocation } from "wouter";
import { client } from "../../api/client.ts";
import { Failure, problemAt, take } from "../../api/failure.ts";
import { Button, Loading, NumberField, Problem, TextField } from "../../parts/index.ts";
import { t, writeDistancesIn } from "../../parts/words.ts";
import { DistancesField } from "../depot/distances-field.tsx";
import { OpeningFields } from "../depot/opening-fields.tsx";
import { PointFields } from "../depot/point-fields.tsx";
import { FailureNote } from "../failure-note.tsx";
import { focusFirstWrong } from "../focus-first-wrong.ts";
import { useDraft } from "../use-draft.ts";
import { usePageTitle } from "../use-page-title.ts";
import {
  bodyOf,
  EMPTY_SET_UP,
  POINT_FIELDS,
  type SetUpDraft,
  TERM_FIELDS,
  TEXT_FIELDS,
} from "./set-up-draft.ts";

/** The one-time link: makes the firm, its depot, its terms and the first manager. */
export default function SetUpPage({ token }: { readonly token: string }) {
  usePageTitle(t("setup.title"));
  const state = useQuery({
    queryKey: ["setup", token],
    queryFn: () => take(client.GET("/api/setup/{token}", { params: { path: { token } } })),
  });
  if (state.isPending) return <Loading />;
  if (state.isError || !state.data.open) {
    return (
      <main className="door">
        <div className="door-card">
          <Problem title={t("setup.used")}>{t("setup.usedHelp")}</Problem>
        </div>
      </main>
    );
  }
  return <SetUpForm token={token} />;
}

function useSetUp(token: string, draft: SetUpDraft, done: () => void) {
  const [, go] = useLocation();
  return useMutation({
    mutationFn: () =>
      take(client.POST("/api/setup/{token}", { params: { path: { token } }, body: bodyOf(draft) })),
    onSuccess: () => {
      done();
      go("/");
    },
  });
}

const HOUR_PATHS = WEEKDAYS.flatMap((day) =>
  ["opens", "closes"].map((end) => `depot.hours.week.${day}.${end}`),
);

/** Names every field that is empty, before anything is sent. */
function missingIn(draft: SetUpDraft): Failure | null {
  const texts = TEXT_FIELDS.filter(({ name }) => draft.texts[name].trim() === "");
  const numbers = [...POINT_FIELDS, ...TERM_FIELDS].filter(({ name }) => draft.numbers[name] === null);
  const problems = [...texts, ...numbers].map(({ path }) => ({ path, expected: t("setup.needed") }));
  return problems.length === 0 ? null : new Failure(0, "badInput", problems);
}

function SetUpForm({ token }: { readonly token: string }) {
  // the password is never kept in the draft
  const [password, setPassword] = useState("");
  const draft = useDraft<SetUpDraft>("setup", EMPTY_SET_UP);
  const [isTried, setTried] = useState(false);
  const { set } = draft;
  // what was typed before there were hours by the day of the week has none
  const value: SetUpDraft = { ...draft.value, hours: draft.value.hours ?? EMPTY_SET_UP.hours };
  // the fields below are typed in them
  writeDistancesIn(value.distances);
  const full: SetUpDraft = { ...value, texts: { ...value.texts, password } };
  const send = useSetUp(token, full, draft.done);
  const failure = (isTried ? missingIn(full) : null) ?? send.error;
  const setText = (name: keyof SetUpDraft["texts"], text: string) =>
    name === "password" ? setPassword(text) : set({ ...value, texts: { ...value.texts, [name]: text } });
  const submit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    setTried(true);
    if (missingIn(full) === null) send.mutate();
    else focusFirstWrong(event.currentTarget);
  };
  const numbers = (fields: typeof TERM_FIELDS) =>
    fields.map(({ name, path, unit, min, max, step }) => (
      <NumberField
        key={name}
        label={t(`setup.${name}`)}
        value={value.numbers[name]}
        onChange={(n) => set({ ...value, numbers: { ...value.numbers, [name]: n } })}
        error={problemAt(failure, path)}
        min={min}
        max={max}
        {...(unit === undefined ? {} : { unit })}
        {...(step === undefined ? {} : { step })}
      />
    ));
  return (
    <main className="door">
      <form className="stack door-wide" onSubmit={submit} noValidate>
        <h1>{t("setup.title")}</h1>
        <section className="card sheet">
          <h2>{t("setup.who")}</h2>
          <div className="sheet-fields">
            {TEXT_FIELDS.map(({ name, path, type }) => (
              <TextField
                key={name}
                label={t(`setup.${name}`)}
                type={type}
                value={full.texts[name]}
                onChange={(text) => setText(name, text)}
                error={problemAt(failure, path)}
              />
            ))}
          </div>
        </section>
        <OpeningFields
          value={value}
          change={(part) => set({ ...value, ...part })}
          failure={failure}
          at="depot.hours"
        />
        <p className="quiet">{t("opening.setUpNote")}</p>
        <section className="card sheet">
          <h2>{t("point.title")}</h2>
          <p className="quiet">{t("point.note")}</p>
          <PointFields
            point={{ latitudeDeg: value.numbers.latitude, longitudeDeg: value.numbers.longitude }}
            onChange={({ latitudeDeg, longitudeDeg }) =>
              set({
                ...value,
                numbers: { ...value.numbers, latitude: latitudeDeg, longitude: longitudeDeg },
              })
            }
            find={(q) =>
              take(client.GET("/api/setup/{token}/places", { params: { path: { token }, query: { q } } }))
            }
            errors={{
              latitude: problemAt(failure, "depot.latitudeDeg"),
              longitude: problemAt(failure, "depot.longitudeDeg"),
            }}
          />
          <DistancesField value={value.distances} onChange={(distances) => set({ ...value, distances })} />
        </section>
        <section className="card sheet">
          <h2>{t("setup.terms")}</h2>
          <p className="quiet">{t("setup.termsNote")}</p>
          <div className="sheet-fields">{numbers(TERM_FIELDS)}</div>
        </section>
        <FailureNote
          failure={failure}
          shown={[
            ...[...TEXT_FIELDS, ...POINT_FIELDS, ...TERM_FIELDS].map(({ path }) => path),
            ...HOUR_PATHS,
          ]}
        />
        <Button type="submit" look="main" isPending={send.isPending}>
          {t(send.isPending ? "desk.sending" : "setup.send")}
        </Button>
      </form>
    </main>
  );
}
