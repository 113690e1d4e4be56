import type { BriefingCard, Moment } from "@setfair/engine";
import type { PostSize, TripForecast } from "@setfair/engine/trip";
import { type ReactNode, useState } from "react";
import type { Guide } from "../offline/database.ts";
import { cardsToRead, cardsToShow, cardTitle } from "../parts/cards.ts";
import { beforeText, keptText } from "../parts/post-words.ts";
import { figureText, t } from "../parts/words.ts";
import { Cards } from "./cards-list.tsx";
import { civilNow } from "./local-time.ts";
import { Opening } from "./opening.tsx";

/** The moments of a day in their order on the road; danger has its own place. */
const ROAD: readonly Moment[] = [
  "onArriving",
  "living",
  "night",
  "leavingPitch",
  "beforeDriving",
  "filling",
  "returning",
];
const POSTS_A = [4, 6, 10, 16];

/** The day as one upright road; each place on it opens. */
export function Day({ guide, forecast }: { readonly guide: Guide; readonly forecast: TripForecast | null }) {
  const cards = [...cardsToShow(guide.briefing), ...cardsToRead(guide.briefing)];
  const hookUp = cards.some(({ id }) => id.startsWith("hookUp."));
  return (
    <section aria-labelledby="day">
      <h2 id="day">{t("hirer.day.title")}</h2>
      <ol className="day-road">
        {ROAD.map((moment) => {
          const own = cards.filter((card) => card.moment === moment);
          if (own.length === 0 && moment !== "night") return null;
          return (
            <li key={moment}>
              <Place
                title={t(`hirer.moment.${moment}`)}
                sub={moment === "night" ? nightWords(forecast, guide, own) : titles(own)}
              >
                {() => <Cards cards={own} />}
              </Place>
              {moment === "onArriving" && hookUp && <Post posts={forecast?.usualPosts ?? []} />}
            </li>
          );
        })}
        <li>
          <a className="day-link" href="#wrong">
            <strong className="day-name">{t("hirer.moment.wrong")}</strong>
            <span className="day-sub">{t("hirer.moment.wrongSub")}</span>
          </a>
        </li>
      </ol>
    </section>
  );
}

/** The first titles of a place, and how many more there are. */
function titles(cards: readonly BriefingCard[]): string {
  const first = cards.slice(0, 3).map(cardTitle);
  return [...first, ...(cards.length > 3 ? [t("hirer.more", { n: cards.length - 3 })] : [])].join(" · ");
}

function nightWords(forecast: TripForecast | null, guide: Guide, cards: readonly BriefingCard[]): string {
  const now = civilNow(guide.trip?.timeZone ?? "UTC");
  const stop = forecast?.stops.find(({ leave, coldestNightC }) => leave >= now && coldestNightC !== null);
  if (stop?.coldestNightC == null) return titles(cards);
  const { p50, p10 } = stop.coldestNightC;
  const degrees = (value: number) => figureText({ value: Math.round(value), unit: "°C" });
  return t("hirer.night", {
    stop: stop.name,
    likely: degrees(p50),
    cold: degrees(p10),
    cards: titles(cards),
  });
}

function Place({
  title,
  sub,
  children,
}: {
  readonly title: string;
  readonly sub: string;
  readonly children: () => ReactNode;
}) {
  return (
    <Opening
      head={
        <>
          <strong className="day-name">{title}</strong>
          <span className="day-sub">{sub}</span>
        </>
      }
    >
      {children}
    </Opening>
  );
}

/** What the post gives, in the hirer's words: power at 230 V. */
function Post({ posts }: { readonly posts: readonly PostSize[] }) {
  const [amperes, setAmperes] = useState<number | null>(null);
  return (
    <Place
      title={t("hirer.post.title")}
      sub={
        amperes === null
          ? t("hirer.post.sub")
          : t("hirer.post.gives", { amperes, watts: figureText({ value: amperes * 230, unit: "W" }) })
      }
    >
      {() => <PostChoices amperes={amperes} onChoose={setAmperes} posts={posts} />}
    </Place>
  );
}

function PostChoices({
  amperes,
  onChoose,
  posts,
}: {
  readonly amperes: number | null;
  readonly onChoose: (amperes: number) => void;
  readonly posts: readonly PostSize[];
}) {
  const sized = posts.find(({ post }) => post.value === amperes);
  return (
    <>
      <fieldset className="post-choices">
        <legend>{t("hirer.post.ask")}</legend>
        {POSTS_A.map((post) => (
          <button
            key={post}
            type="button"
            className="choice"
            aria-pressed={amperes === post}
            onClick={() => onChoose(post)}
          >
            {figureText({ value: post, unit: "A" })}
          </button>
        ))}
      </fieldset>
      {amperes !== null && (
        <div className="stack-tight" role="status">
          <p>
            <strong>
              {t("hirer.post.gives", { amperes, watts: figureText({ value: amperes * 230, unit: "W" }) })}
            </strong>
          </p>
          {sized === undefined ? (
            <p>
              {t(amperes < 10 ? "hirer.post.little" : amperes < 16 ? "hirer.post.some" : "hirer.post.much")}
            </p>
          ) : (
            <OnThisPost post={sized} />
          )}
        </div>
      )}
      <p className="quiet">{t("hirer.post.caution")}</p>
    </>
  );
}

/** What this van may have on together, and what goes off before a kettle and the like. */
function OnThisPost({ post }: { readonly post: PostSize }) {
  return (
    <>
      <p>
        <strong>{t("onPost.together")}</strong>
      </p>
      <ul>
        {post.kept.map((load) => (
          <li key={load.kind}>{keptText(load)}</li>
        ))}
      </ul>
      <p>
        <strong>{t("onPost.before")}</strong>
      </p>
      <ul>
        {post.before.map((load) => (
          <li key={load.kind}>{beforeText(load)}</li>
        ))}
      </ul>
      {post.isLow && <p>{t("onPost.lowVoltage")}</p>}
      <p className="quiet">{t("onPost.assumed")}</p>
    </>
  );
}
