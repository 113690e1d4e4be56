import type { PostForecast } from "@setfair/engine";
import { FigureTap } from "../../../parts/index.ts";
import { beforeText, keptText, loadName } from "../../../parts/post-words.ts";
import { figureText, t } from "../../../parts/words.ts";

/** Stops whose posts do the same for this vehicle are told of once. */
function alike(posts: readonly PostForecast[]): readonly (readonly PostForecast[])[] {
  const groups = new Map<string, PostForecast[]>();
  for (const post of posts) {
    const key = JSON.stringify([
      post.limit.value,
      post.isOnDrum,
      post.kept.map(({ kind, stage }) => [kind, stage.value]),
    ]);
    groups.set(key, [...(groups.get(key) ?? []), post]);
  }
  return [...groups.values()].sort((a, b) => a[0]!.limit.value - b[0]!.limit.value);
}

/** What each post of the trip can do for this vehicle, the weakest first. */
export function PostsCard({ posts }: { readonly posts: readonly PostForecast[] }) {
  if (posts.length === 0) return null;
  return (
    <section className="card" aria-labelledby="posts-title">
      <h2 id="posts-title">{t("onPost.title")}</h2>
      <div className="post-boxes">
        {alike(posts).map((group) => (
          <Post key={group[0]!.stop} post={group[0]!} names={group.map(({ name }) => name)} />
        ))}
      </div>
      <p className="post-caution">{t("onPost.caution")}</p>
      <p className="quiet last-foot">{t("onPost.assumed")}</p>
    </section>
  );
}

function Post({ post, names }: { readonly post: PostForecast; readonly names: readonly string[] }) {
  const limit = <FigureTap figure={post.limit} label={t("onPost.limit")} />;
  return (
    <div className="line-box">
      <h3>
        {[...new Set(names)].join(", ")}: {limit}
      </h3>
      <p>
        {t("onPost.givesFrom")} <FigureTap figure={post.power} label={t("onPost.power")} />;{" "}
        {t("onPost.voltsFrom")} <FigureTap figure={post.volts} label={t("onPost.volts")} />.{" "}
        {post.isOnDrum && t("onPost.drum")} {post.isLow && t("onPost.low")}
      </p>
      <div className="post-columns">
        <div>
          <h4>{t("onPost.together")}</h4>
          <ul>
            {post.kept.map((load) => (
              <li key={load.kind} className={load.stage.value === 0 ? "post-off" : undefined}>
                {keptText(load)}
              </li>
            ))}
          </ul>
        </div>
        <div>
          <h4>{t("onPost.alone")}</h4>
          <ul>
            {post.alone.map((load) => (
              <li key={load.kind} className={`post-${load.verdict}`}>
                {t("onPost.aloneIs", { load: loadName(load), current: figureText(load.current) })}:{" "}
                <strong>{t("onPost.verdict", { verdict: load.verdict })}</strong>
                {load.latest !== null && (
                  <>
                    {" "}
                    <FigureTap figure={load.latest} label={t("onPost.latest")}>
                      {t("onPost.within", {
                        minutes: figureText({ ...load.latest, value: Math.ceil(load.latest.value) }),
                      })}
                    </FigureTap>
                  </>
                )}
              </li>
            ))}
          </ul>
        </div>
        <div>
          <h4>{t("onPost.before")}</h4>
          <ul>
            {post.before.map((load) => (
              <li key={load.kind}>{beforeText(load)}</li>
            ))}
          </ul>
        </div>
      </div>
    </div>
  );
}
