import { useQuery } from "@tanstack/react-query";
import { useLocation, useSearch } from "wouter";
import { client, type Schemas } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { Button, LinkButton, Loading } from "../../parts/index.ts";
import { dateText, t } from "../../parts/words.ts";
import { CouldServeCard } from "../enquiry/could-serve-card.tsx";
import { FailureNote } from "../failure-note.tsx";
import { Reminders } from "../hire/notes/reminders.tsx";
import { useSignedIn } from "../session.ts";
import { usePageTitle } from "../use-page-title.ts";
import { BackList, OnTheRoad, OutList, Waiting } from "./day-lists.tsx";
import { DayPapers } from "./day-papers.tsx";
import { FirstSteps } from "./first-steps.tsx";
import { HoldingUp } from "./holding-up.tsx";
import { RoadOfTheDay } from "./road-of-the-day.tsx";
import { useDayKeys } from "./use-day-keys.ts";
import "./today.css";

type Today = Schemas["Today"];

function moveDay(date: string, days: number): string {
  const day = new Date(`${date}T00:00:00Z`);
  day.setUTCDate(day.getUTCDate() + days);
  return day.toISOString().slice(0, 10);
}

/** The day that is shown; it stands in the address, so that coming back from a hire comes back to it. */
function useDay(today: string): readonly [string, (date: string) => void] {
  const [, go] = useLocation();
  const asked = new URLSearchParams(useSearch()).get("day") ?? "";
  const show = (date: string) => go(date === today ? "/" : `/?day=${date}`, { replace: true });
  return [/^\d{4}-\d{2}-\d{2}$/.test(asked) ? asked : today, show];
}

/** The day at a glance: its road, what holds things up, then out, back and on the road. */
export default function TodayPage() {
  const session = useSignedIn();
  const [date, setDate] = useDay(session.today);
  usePageTitle(t("desk.nav.today"));
  useDayKeys({
    move: (days) => setDate(moveDay(date, days)),
    today: () => setDate(session.today),
  });
  const today = useQuery({
    queryKey: ["today", date],
    queryFn: () => take(client.GET("/api/today", { params: { query: { date } } })),
    refetchInterval: 60_000,
    placeholderData: (before) => before,
  });
  const isQuiet = today.data?.blockers.length === 0;
  const firstSteps = session.may.includes("terms.write") && <FirstSteps />;
  return (
    <div className="today">
      <div className="page-head">
        <div className="day-pick">
          <Button
            look="quiet"
            onPress={() => setDate(moveDay(date, -1))}
            aria-label={t("desk.today.dayBefore")}
            aria-keyshortcuts="ArrowLeft"
          >
            ‹
          </Button>
          <h1>{dateText(date, "long")}</h1>
          <Button
            look="quiet"
            onPress={() => setDate(moveDay(date, 1))}
            aria-label={t("desk.today.dayAfter")}
            aria-keyshortcuts="ArrowRight"
          >
            ›
          </Button>
          {date !== session.today && (
            <Button onPress={() => setDate(session.today)} aria-keyshortcuts="T">
              {t("diary.today")}
            </Button>
          )}
        </div>
        {today.data !== undefined && <p className="quiet">{countsOf(today.data)}</p>}
        <div className="page-acts">
          <LinkButton href="/enquiry">{t("desk.canWeTake")}</LinkButton>
          {session.may.includes("hire.write") && (
            <LinkButton href="/enquiry" look="main">
              {t("desk.newEnquiry")}
            </LinkButton>
          )}
        </div>
      </div>
      {/* what holds the day up comes before what can be entered on any day */}
      {isQuiet && firstSteps}
      {today.isPending && <Loading />}
      <FailureNote failure={today.error} onAgain={() => void today.refetch()} />
      {today.data !== undefined && <Day today={today.data} isToday={today.data.date === session.today} />}
      {!isQuiet && firstSteps}
    </div>
  );
}

function Day({ today, isToday }: { readonly today: Today; readonly isToday: boolean }) {
  return (
    <>
      <RoadOfTheDay today={today} isToday={isToday} />
      <HoldingUp blockers={today.blockers} now={today.now} date={today.date} />
      <Reminders date={today.date} />
      <div className="today-lists">
        <OutList hires={today.out} date={today.date} />
        <div className="stack">
          <BackList hires={today.back} now={isToday ? today.now : null} date={today.date} />
          <OnTheRoad hires={today.onTheRoad} />
          <CouldServeCard />
          <DayPapers date={today.date} />
        </div>
        <Waiting today={today} />
      </div>
    </>
  );
}

const countsOf = (today: Today): string =>
  t("desk.today.counts", {
    out: today.out.length,
    back: today.back.length,
    road: today.onTheRoad.length,
  });
