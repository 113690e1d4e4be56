import { useMutation, useQuery } from "@tanstack/react-query";
import { type FormEvent, useState } from "react";
import { useLocation } from "wouter";
import { client } from "../../api/client.ts";
import { Failure, problemAt, take } from "../../api/failure.ts";
import { Button, Empty, Loading, TextField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { focusFirstWrong } from "../focus-first-wrong.ts";
import { queries } from "../query-client.ts";
import { useDraft } from "../use-draft.ts";
import { usePageTitle } from "../use-page-title.ts";
import { placeOfHire } from "../where.ts";
import { canAsk, EMPTY_ENQUIRY, type EnquiryDraft, newHireOf, partyOf } from "./enquiry-draft.ts";
import { PartyAndDates } from "./party-and-dates.tsx";
import { VehicleAnswers } from "./vehicle-answers.tsx";
import "./enquiry.css";

/** Names what is missing before anything is sent; empty when nothing is. */
function missingIn(draft: EnquiryDraft): Failure | null {
  const problems = [
    ...(draft.name.trim() === "" ? [{ path: "customer.name", expected: t("desk.enquiry.nameNeeded") }] : []),
    ...(draft.telephone.trim() === ""
      ? [{ path: "customer.telephone", expected: t("desk.enquiry.telephoneNeeded") }]
      : []),
    ...(/.+@.+\..+/.test(draft.email)
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
  const draft = useDraft<EnquiryDraft>("enquiry", EMPTY_ENQUIRY);
  const [isTried, setTried] = useState(false);
  const { value, set } = draft;
  const change = (part: Partial<EnquiryDraft>) => set({ ...value, ...part });
  const question = { party: partyOf(value), from: value.from, to: value.to };
  const answers = useQuery({
    queryKey: ["availability", question],
    queryFn: () => take(client.POST("/api/availability", { body: question })),
    enabled: canAsk(value),
    placeholderData: (before) => before,
  });
  const save = useMutation({
    mutationFn: () => take(client.POST("/api/hires", { body: newHireOf(value) })),
    onSuccess: (page) => {
      draft.done();
      queries.setQueryData(["hire", page.hire.id], page);
      void queries.invalidateQueries({ queryKey: ["today"] });
      go(`${placeOfHire(page.hire.id)}${page.hire.vehicle === null ? "" : "/money"}`);
    },
  });
  const send = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    setTried(true);
    if (missingIn(value) === null) save.mutate();
    else focusFirstWrong(event.currentTarget);
  };
  const failure = (isTried ? missingIn(value) : null) ?? save.error;
  return (
    <form className="enquiry" onSubmit={send} noValidate>
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
          <Caller value={value} change={change} failure={failure} />
        </div>
        <section className="card" aria-labelledby="answers-title" aria-live="polite">
          <h2 id="answers-title">{t("desk.enquiry.vehicles")}</h2>
          {!canAsk(value) && <Empty>{t("desk.enquiry.whenAndWho")}</Empty>}
          {canAsk(value) && answers.isPending && <Loading what={t("desk.enquiry.looking")} />}
          <FailureNote failure={answers.error} onAgain={() => void answers.refetch()} />
          {canAsk(value) && answers.data !== undefined && (
            <VehicleAnswers
              answers={answers.data.vehicles}
              chosen={value.vehicleId}
              onChoose={(vehicleId) => change({ vehicleId })}
              onShift={(from, to, vehicleId) => change({ from, to, vehicleId })}
            />
          )}
        </section>
      </div>
      <FailureNote failure={failure} shown={SHOWN} />
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
        <span className="quiet">{t("desk.enquiry.bookedLater")}</span>
      </div>
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
