import { useQuery } from "@tanstack/react-query";
import { useDeferredValue, useState } from "react";
import { Link } from "wouter";
import { client } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { Empty, Loading, TextField } from "../../parts/index.ts";
import { dateText, t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { usePageTitle } from "../use-page-title.ts";
import "./help.css";

/** Somebody rings: who is on the road, and a word of the name, the plate or the number. */
export default function HelpPage() {
  usePageTitle(t("desk.help.title"));
  const [typed, setTyped] = useState("");
  const q = useDeferredValue(typed.trim());
  const found = useQuery({
    queryKey: ["hires", "ringing", q],
    queryFn: () =>
      take(
        client.GET("/api/hires", {
          params: { query: q === "" ? { stage: "onHire", limit: 25 } : { q, limit: 12 } },
        }),
      ),
    placeholderData: (before) => before,
  });
  const hires = (found.data?.hires ?? []).filter(({ vehicle }) => vehicle !== null);
  return (
    <>
      <div className="page-head">
        <h1>{t("desk.help.title")}</h1>
      </div>
      <section className="card stack">
        <TextField label={t("desk.help.search")} type="search" value={typed} onChange={setTyped} />
        {found.isPending && <Loading />}
        <FailureNote failure={found.error} onAgain={() => void found.refetch()} />
        <h2>{t(q === "" ? "desk.help.onTheRoad" : "desk.help.found")}</h2>
        {found.isSuccess && hires.length === 0 && <Empty>{t("desk.help.none")}</Empty>}
        <ul className="ringing">
          {hires.map((hire) => (
            <li key={hire.id}>
              <Link href={`/help/${encodeURIComponent(hire.id)}`} className="ringing-link">
                <strong>{hire.customer}</strong>
                <span>
                  {hire.vehicle?.name} <span className="nowrap">{hire.vehicle?.registration}</span>
                </span>
                <span className="quiet">
                  {t("desk.help.until", {
                    stage: t(`stage.${hire.stage}`),
                    to: dateText(hire.to, "fullTime"),
                  })}
                </span>
              </Link>
            </li>
          ))}
        </ul>
      </section>
    </>
  );
}
