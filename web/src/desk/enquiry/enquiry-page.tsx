import { useMutation, useQuery } from "@tanstack/react-query";
import { type FormEvent, useRef, useState } from "react";
import { useLocation } from "wouter";
import { client } from "../../api/client.ts";
import { Failure, problemAt, take } from "../../api/failure.ts";
import { Button, Empty, Loading, TextField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { focusFirstWrong } from "../focus-first-wrong.ts";
import { queries } from "../query-client.ts";
import { useSignedIn } from "../session.ts";
import { useDraft } from "../use-draft.ts";
import { usePageTitle } from "../use-page-title.ts";
import { placeOfHire } from "../where.ts";
import { CounterOffers } from "./counter-offers.tsx";
import { askedOf, canAsk, EMPTY_ENQUIRY, type EnquiryDraft, partyOf } from "./enquiry-draft.ts";
import { type KeepHow, keepEnquiry } from "./keep-enquiry.ts";
import { KnownHirers } from "./known-hirers.tsx";
import { PartyAndDates } from "./party-and-dates.tsx";
import { ShortOf } from "./short-of.tsx";
import { VehicleAnswers } from "./vehicle-answers.tsx";
import { WhereAndWhat } from "./where-and-what.tsx";
import "../hire/hire.css";
import "../hire/abroad/abroad.css";
import "./enquiry.css";

/** Names what is missing before anything is sent; empty when nothing is. */
function missingIn(draft: EnquiryDraft): Failure | null {
  const problems = [
    ...(draft.name.trim() === "" ? [{ path: "customer.name", expected: t("desk.enquiry.nameNeeded") }] : []),
    ...(draft.telephone.trim() === ""
      ? [{ path: "customer.telephone", expected: t("desk.enquiry.telephoneNeeded") }]
      : []),
    ...(draft.email.trim() === "" || /.+@.+\..+/.test(draft.email)
      ? []
      : [{ path: "customer.email", expected: t("desk.enquiry.emailNeeded") }]),
    ...(draft.from === "" ? [{ path: "from", expected: t("desk.enquiry.fromNeeded") }] : []),
    ...(draft.to === "" || draft.to <= draft.from
      ? [{ path: "to", expected: t("desk.enquiry.toNeeded") }]
      : []),
  ];
  return problems.length === 0 ? null : new Failure(0, "badInput", problems);
}

const SHOWN = ["customer.name", "customer.telephone", "customer.email", "from", "to", "wishes"];

/** Can we take it? Party and dates, the vehicles that could, the price, then who it is for. */
export default function EnquiryPage() {
  usePageTitle(t("desk.newEnquiry"));
  const [, go] = useLocation();
  const mayWrite = useSignedIn().may.includes("hire.write");
  const draft = useDraft<EnquiryDraft>("enquiry", EMPTY_ENQUIRY);
  const [isTried, setTried] = useState(false);
  const { set } = draft;
  // a draft kept from before may lack what was added since
  const value = { ...EMPTY_ENQUIRY, ...draft.value };
  const change = (part: Partial<EnquiryDraft>) => set({ ...value, ...part });
  const question = { party: partyOf(value), from: value.from, to: value.to, asked: askedOf(value) };
  const answers = useQuery({
    queryKey: ["availability", question],
    queryFn: () => take(client.POST("/api/availability", { body: question })),
    enabled: canAsk(value),
    placeholderData: (before) => before,
  });
  const save = useMutation({
    mutationFn: (how: KeepHow) => keepEnquiry(value, how),
    onSuccess: ({ page, went }) => {
      draft.done();
      queries.setQueryData(["hire", page.hire.id], page);
      for (const kind of ["today", "enquiries", "hires"])
        void queries.invalidateQueries({ queryKey: [kind] });
      go(went ? `${placeOfHire(page.hire.id)}${page.hire.vehicle === null ? "" : "/money"}` : "/enquiries");
    },
  });
  const keep = (how: KeepHow, form: HTMLFormElement | null) => {
    setTried(true);
    if (missingIn(value) === null) save.mutate(how);
    else if (form !== null) focusFirstWrong(form);
  };
  const send = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    keep("quote", event.currentTarget);
  };
  const form = useRef<HTMLFormElement>(null);
  const failure = (isTried ? missingIn(value) : null) ?? save.error;
  return (
    <form className="enquiry" onSubmit={send} noValidate ref={form}>
      <div className="page-head">
        <h1>{t("desk.canWeTakeLong")}</h1>
        <div className="page-acts">
          {draft.isDirty && (
            <Button look="quiet" onPress={draft.done}>
              {t("desk.startAgain")}
            </Button>
          )}
        </div>
      </div>
      <div className="enquiry-columns">
        <div className="stack">
          <PartyAndDates value={value} change={change} failure={failure} />
          <WhereAndWhat value={value} change={change} failure={failure} />
          <Caller value={value} change={change} failure={failure} />
        </div>
        <section className="card" aria-labelledby="answers-title" aria-live="polite">
          <h2 id="answers-title">{t("desk.enquiry.vehicles")}</h2>
          {!canAsk(value) && <Empty>{t("desk.enquiry.whenAndWho")}</Empty>}
          {canAsk(value) && answers.isPending && <Loading what={t("desk.enquiry.looking")} />}
          <FailureNote failure={answers.error} onAgain={() => void answers.refetch()} />
          {canAsk(value) && answers.data?.short !== undefined && (
            <ShortOf
              short={answers.data.short}
              findings={answers.data.vehicles[0]?.findings ?? []}
              onFewer={(extra, count) => change({ extras: { ...value.extras, [extra]: count } })}
            />
          )}
          {canAsk(value) && answers.data?.offers !== undefined && (
            <CounterOffers
              offers={answers.data.offers}
              onShift={(from, to, vehicleId) => change({ from, to, vehicleId })}
            />
          )}
          {canAsk(value) && answers.data !== undefined && (
            <VehicleAnswers
              answers={answers.data.vehicles}
              chosen={value.vehicleId}
              onChoose={(vehicleId) => change({ vehicleId })}
              onShift={(from, to, vehicleId) => change({ from, to, vehicleId })}
              onFewer={(extra, count) => change({ extras: { ...value.extras, [extra]: count } })}
            />
          )}
        </section>
      </div>
      <FailureNote failure={failure} shown={SHOWN} />
      {mayWrite ? (
        <div className="enquiry-foot">
          <Button type="submit" look="main" isPending={save.isPending}>
            {t(
              save.isPending
                ? "desk.sending"
                : value.vehicleId === null
                  ? "desk.enquiry.save"
                  : "desk.enquiry.saveAndQuote",
            )}
          </Button>
          {value.vehicleId !== null && (
            <Button onPress={() => keep("book", form.current)} isDisabled={save.isPending}>
              {t("rates.bookAtOnce")}
            </Button>
          )}
          {canAsk(value) && (
            <Button look="quiet" onPress={() => keep("wait", form.current)} isDisabled={save.isPending}>
              {t("rates.wait")}
            </Button>
          )}
          <span className="quiet">{t("desk.enquiry.bookedLater")}</span>
        </div>
      ) : (
        <p className="quiet">{t("known.lookOnly")}</p>
      )}
    </form>
  );
}

interface PieceProps {
  readonly value: EnquiryDraft;
  readonly change: (part: Partial<EnquiryDraft>) => void;
  readonly failure: unknown;
}

function Caller({ value, change, failure }: PieceProps) {
  return (
    <section className="card stack" aria-labelledby="caller-title">
      <h2 id="caller-title">{t("desk.enquiry.caller")}</h2>
      <TextField
        label={t("desk.field.name")}
        value={value.name}
        onChange={(name) => change({ name })}
        error={problemAt(failure, "customer.name")}
        autoComplete="off"
      />
      <KnownHirers value={value} change={change} />
      <div className="sheet-fields">
        <TextField
          label={t("desk.field.telephone")}
          type="tel"
          value={value.telephone}
          onChange={(telephone) => change({ telephone })}
          error={problemAt(failure, "customer.telephone")}
          autoComplete="off"
        />
        <TextField
          label={t("desk.field.email")}
          note={t("known.emailNote")}
          type="email"
          value={value.email}
          onChange={(email) => change({ email })}
          error={problemAt(failure, "customer.email")}
          autoComplete="off"
        />
      </div>
      <TextField
        label={t("desk.enquiry.wishes")}
        lines={2}
        value={value.wishes}
        onChange={(wishes) => change({ wishes })}
        error={problemAt(failure, "wishes")}
      />
    </section>
  );
}
