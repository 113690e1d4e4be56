import type { Schemas } from "../../../api/client.ts";
import { dateText, t } from "../../../parts/words.ts";
import { useSignedIn } from "../../session.ts";

/** Each tablet of the yard that recorded something of the person: forgotten, told next time, or to be looked for. */
export function ErasureTablets({ state }: { readonly state: Schemas["Erasure"] }) {
  const { depot } = useSignedIn();
  const at = (instant: string) => dateText(instant, "dayTime", depot.timeZone);
  if (state.tablets.length === 0) return <p className="quiet">{t("erasure.noTablet")}</p>;
  return (
    <>
      <h3>{t("erasure.tablets")}</h3>
      <ul className="waits">
        {state.tablets.map(({ id, by, seenAt, forgottenAt, unseenDays }) => (
          <li key={id}>
            <strong>{id}</strong>{" "}
            <span>
              {t("erasure.tabletLine", {
                by: by ?? "none",
                seen: at(seenAt),
                kept:
                  forgottenAt === null
                    ? t("erasure.tabletStill")
                    : t("erasure.tabletForgot", { at: at(forgottenAt) }),
              })}{" "}
              {forgottenAt === null &&
                unseenDays >= state.unseenAfterDays &&
                t("erasure.tabletUnseen", { days: unseenDays })}
            </span>
          </li>
        ))}
      </ul>
    </>
  );
}
