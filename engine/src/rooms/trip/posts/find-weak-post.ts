import type { Finding } from "../../../base/finding.ts";
import type { PostForecast } from "./types.ts";

/** A note where an ordinary kettle alone trips a post of the trip, or the heater does not get all its stages; about the weakest post. */
export function findWeakPost(posts: readonly PostForecast[]): Finding[] {
  const weak = posts.filter(isWeak);
  const worst = weak.reduce<PostForecast | null>(
    (least, post) => (least === null || post.limit.value < least.limit.value ? post : least),
    null,
  );
  if (worst === null) return [];
  const heater = worst.kept.find(({ kind }) => kind === "heating");
  return [
    {
      code: "trip.weakPost",
      gate: "resources",
      severity: "note",
      basis: "physics",
      about: `stops.${worst.stop}`,
      facts: {
        stop: worst.name,
        stops: weak.length,
        limit: worst.limit,
        power: worst.power,
        heater:
          heater === undefined || heater.stage.value >= heater.full.value
            ? "all"
            : heater.stage.value > 0
              ? "part"
              : "off",
        stage: heater?.stage ?? worst.power,
        kettle: kettleOf(worst)?.verdict ?? "fits",
      },
      sources: ["en-60898", "bs-7671-4f3"],
      mends: [{ code: "trip.smallKettle", facts: {} }],
    },
  ];
}

const kettleOf = ({ alone }: PostForecast) => alone.find(({ kind }) => kind === "kettle");

function isWeak(post: PostForecast): boolean {
  const isTurnedDown = post.kept.some(
    ({ kind, stage, full }) => kind === "heating" && stage.value < full.value,
  );
  return kettleOf(post)?.verdict === "trips" || isTurnedDown;
}
