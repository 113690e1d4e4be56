import { icon } from "@setfair/drawing";
import type { VehicleDescription } from "@setfair/engine";
import type { TripForecast } from "@setfair/engine/trip";
import { type ComponentType, lazy, Suspense, useEffect, useSyncExternalStore } from "react";
import type { Guide } from "../offline/database.ts";
import { ScrollMain } from "../parts/scroll-main.tsx";
import { SvgView } from "../parts/svg-view.tsx";
import { t } from "../parts/words.ts";
import { MissedLine, MissedOver, StatementCard } from "./after/after-cards.tsx";
import { telephoneOf } from "./call-link.tsx";
import { CountriesLink } from "./countries-link.tsx";
import { DangerPage } from "./danger-page.tsx";
import { Day } from "./day.tsx";
import { FaultPage } from "./fault-page.tsx";
import { bringWords, useAllWords } from "./guide-words.ts";
import { feetAndInches } from "./height.ts";
import { KeptNotice } from "./kept-notice.tsx";
import { Matters } from "./matters.tsx";
import { PanelPage } from "./panel-page.tsx";
import { afterPaint } from "./phone.ts";
import { Things } from "./things.tsx";
import { type HirerGuide, useGuide } from "./use-guide.ts";
import { WrongPage } from "./wrong-page.tsx";

/** A page that comes after the first card; where its file cannot come it says so, and how to try again. */
const later = (load: () => Promise<{ default: ComponentType<AfterProps> }>) =>
  lazy(() => load().catch(() => ({ default: Away })));
const statementPage = () => import("./after/statement-page.tsx");
const missedPage = () => import("./after/missed-page.tsx");
const countriesPage = () => import("./countries-page.tsx");
const stopsPage = () => import("./stops-page.tsx");
const CountriesPage = later(countriesPage);
const StopsPage = later(stopsPage);
const StatementPage = later(statementPage);
const MissedPage = later(missedPage);

const LATER: Readonly<Record<string, ComponentType<AfterProps>>> = {
  "#statement": StatementPage,
  "#missed": MissedPage,
  "#countries": CountriesPage,
  "#stops": StopsPage,
};

/** What can wait until the first card is drawn, and should be here before the signal goes. */
function bringTheRest(guide: Guide): void {
  void bringWords();
  const pages = [
    ...(guide.statementAt == null ? [] : [statementPage]),
    ...(guide.additions == null ? [] : [missedPage]),
    ...((guide.countries?.length ?? 0) === 0 ? [] : [countriesPage]),
    ...(guide.trip === null ? [] : [stopsPage]),
  ];
  for (const page of pages) page().catch(() => undefined);
}

const useHash = (): string =>
  useSyncExternalStore(
    (listener) => {
      addEventListener("hashchange", listener);
      return () => removeEventListener("hashchange", listener);
    },
    () => location.hash,
  );

/** The hirer's guide to their own vehicle; call and danger never leave the screen. */
export function GuideApp({ token }: { readonly token: string }) {
  const hirer = useGuide(token);
  const hash = useHash();
  const { guide } = hirer;
  if (guide === undefined || (guide === null && hirer.answer === "asking")) {
    return <p className="state-box">{t("hirer.loading")}</p>;
  }
  if (guide === null) return <NoGuide answer={hirer.answer} />;
  const ended = hirer.answer === "gone" || guide.expires < new Date().toISOString();
  return (
    <>
      <GuideBar guide={guide} />
      {ended ? <Ended guide={guide} /> : <Page token={token} hash={hash} hirer={hirer} guide={guide} />}
      <footer className="guide-foot">
        <a className="button danger-button" href={hash === "#danger" ? "#day" : "#danger"}>
          {hash === "#danger" ? t("hirer.danger.back") : t("hirer.danger.open")}
        </a>
      </footer>
    </>
  );
}

const NEEDS_ALL_WORDS = /^#(wrong$|fault\/|statement$|missed$|countries$|stops$)/;

function Page({
  token,
  hash,
  hirer,
  guide,
}: {
  readonly token: string;
  readonly hash: string;
  readonly hirer: HirerGuide;
  readonly guide: Guide;
}) {
  const hasWords = useAllWords();
  useEffect(() => afterPaint(() => bringTheRest(guide)), [guide]);
  if (hash === "#danger") return <DangerPage guide={guide} />;
  if (!hasWords && NEEDS_ALL_WORDS.test(hash)) return <Coming />;
  const After = LATER[hash];
  if (After !== undefined) {
    return (
      <Suspense fallback={<Coming />}>
        <After token={token} guide={guide} forecast={hirer.forecast} />
      </Suspense>
    );
  }
  if (hash === "#wrong") return <WrongPage guide={guide} />;
  if (hash.startsWith("#fault/")) {
    const symptom = decodeURIComponent(hash.slice("#fault/".length));
    return <FaultPage key={symptom} hirer={hirer} guide={guide} symptom={symptom} />;
  }
  if (hash === "#panel") return <PanelPage hirer={hirer} guide={guide} />;
  return (
    <ScrollMain className="guide-main stack">
      <h1 className="visually-hidden">{t("hirer.title", { name: guide.vehicle.name })}</h1>
      <StatementCard guide={guide} />
      <Matters hirer={hirer} guide={guide} />
      <KeptNotice keeping={hirer.keeping} guide={guide} isSecure={isSecureContext} />
      <MissedLine guide={guide} />
      <Day guide={guide} forecast={hirer.forecast} />
      <CountriesLink guide={guide} />
      <Things guide={guide} />
      <MissedOver guide={guide} />
      <p className="quiet">
        {t("hirer.depotFirst", { firm: guide.firm, depot: guide.depot.name })}
        {hirer.keeping === "kept" && isSecureContext && ` ${t("hirer.kept.yes")}`}
      </p>
    </ScrollMain>
  );
}

interface AfterProps {
  readonly token: string;
  readonly guide: Guide;
  readonly forecast: TripForecast | null;
}

function Away() {
  return (
    <ScrollMain className="guide-main stack">
      <p role="status">{t("hirer.away")}</p>
      <button type="button" className="button" onClick={() => location.reload()}>
        {t("hirer.again")}
      </button>
    </ScrollMain>
  );
}

/** The words of this page are still on their way. */
function Coming() {
  return (
    <ScrollMain className="guide-main stack">
      <p role="status">{t("hirer.loading")}</p>
    </ScrollMain>
  );
}

const heightWords = (guide: Guide): string => {
  const { heightM } = (guide.vehicle.description as VehicleDescription).dimensions;
  return t("hirer.height", { m: heightM.toFixed(2), ...feetAndInches(heightM) });
};

function GuideBar({ guide }: { readonly guide: Guide }) {
  return (
    <header className="guide-bar">
      <a href="#day" className="guide-bar-name">
        <strong>{guide.vehicle.name}</strong>
        <span>
          <span className="nowrap">{guide.vehicle.registration}</span> ·{" "}
          <span className="nowrap">{heightWords(guide)}</span>
        </span>
      </a>
      <a className="guide-call" href={telephoneOf(guide)}>
        <SvgView node={icon("phone")} />
        {t("hirer.call")}
      </a>
    </header>
  );
}

function NoGuide({ answer }: { readonly answer: HirerGuide["answer"] }) {
  return (
    <ScrollMain className="guide-main stack">
      <h1>{t(answer === "gone" ? "hirer.gone.title" : "hirer.none.title")}</h1>
      <p>{t(answer === "gone" ? "hirer.gone.text" : "hirer.none.text")}</p>
    </ScrollMain>
  );
}

function Ended({ guide }: { readonly guide: Guide }) {
  return (
    <ScrollMain className="guide-main stack">
      <h1>{t("hirer.ended.title")}</h1>
      <p>{t("hirer.ended.text", { depot: guide.depot.name, telephone: guide.depot.telephone })}</p>
    </ScrollMain>
  );
}
