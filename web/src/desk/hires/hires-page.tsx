import { useInfiniteQuery } from "@tanstack/react-query";
import { useDeferredValue } from "react";
import { Link } from "wouter";
import { client, type Schemas } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { Button, Empty, LinkButton, Loading, ScrollX, SelectField, TextField } from "../../parts/index.ts";
import { dateText, t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { HirePill, owedText } from "../today/day-lists.tsx";
import { useDraft } from "../use-draft.ts";
import { usePageTitle } from "../use-page-title.ts";
import { placeOfHire } from "../where.ts";
import "./hires.css";

const STAGES = [
  "enquiry",
  "quote",
  "booked",
  "handedOver",
  "onHire",
  "returned",
  "settled",
  "closed",
  "lost",
  "cancelled",
  "noShow",
] as const;
type Stage = (typeof STAGES)[number];
interface Search {
  readonly q: string;
  readonly stage: Stage | "all";
}

function useHires({ q, stage }: Search) {
  const words = useDeferredValue(q.trim());
  return useInfiniteQuery({
    queryKey: ["hires", words, stage],
    initialPageParam: "",
    queryFn: ({ pageParam }) =>
      take(
        client.GET("/api/hires", {
          params: {
            query: {
              ...(words === "" ? {} : { q: words }),
              ...(stage === "all" ? {} : { stage }),
              ...(pageParam === "" ? {} : { after: pageParam }),
              limit: 25,
            },
          },
        }),
      ),
    getNextPageParam: (last) => last.next ?? undefined,
    placeholderData: (before) => before,
  });
}

function HireRow({ hire }: { readonly hire: Schemas["HireSummary"] }) {
  return (
    <tr>
      <td className="nowrap">
        <Link href={placeOfHire(hire.id)} className="link-row">
          {hire.customer}
        </Link>
        <div className="quiet">{hire.reference}</div>
      </td>
      <td>
        {hire.vehicle === null ? (
          <span className="quiet">{t("desk.noVehicle")}</span>
        ) : (
          <>
            {hire.vehicle.name} <span className="quiet nowrap">{hire.vehicle.registration}</span>
          </>
        )}
      </td>
      <td className="num">
        {dateText(hire.from, "fullTime")}
        <div className="quiet">{t("desk.hires.until", { to: dateText(hire.to, "fullTime") })}</div>
      </td>
      <td>
        <HirePill hire={hire} />
      </td>
      <td className="quiet num">{owedText(hire)}</td>
    </tr>
  );
}

/** Every hire, found by name, registration or number. */
export default function HiresPage() {
  usePageTitle(t("desk.nav.hires"));
  const { value, set } = useDraft<Search>("hires", { q: "", stage: "all" });
  const found = useHires(value);
  const hires = found.data?.pages.flatMap((page) => page.hires) ?? [];
  const stages = [
    { value: "all" as const, label: t("desk.hires.allStages") },
    ...STAGES.map((id) => ({ value: id, label: t(`stage.${id}`) })),
  ];
  return (
    <>
      <div className="page-head">
        <h1>{t("desk.nav.hires")}</h1>
        <div className="page-acts">
          <LinkButton href="/enquiry" look="main">
            {t("desk.newEnquiry")}
          </LinkButton>
        </div>
      </div>
      <section className="card stack">
        <div className="hires-search">
          <TextField
            label={t("desk.hires.search")}
            type="search"
            value={value.q}
            onChange={(q) => set({ ...value, q })}
          />
          <SelectField
            label={t("desk.hires.stage")}
            value={value.stage}
            options={stages}
            onChange={(stage) => set({ ...value, stage })}
          />
        </div>
        {found.isPending && <Loading />}
        <FailureNote failure={found.error} onAgain={() => void found.refetch()} />
        {found.isSuccess && hires.length === 0 && <Empty>{t("desk.hires.none")}</Empty>}
        {hires.length > 0 && (
          <ScrollX label={t("desk.nav.hires")}>
            <table className="dense hires-table">
              <thead>
                <tr>
                  <th>{t("desk.hires.who")}</th>
                  <th>{t("desk.hires.vehicle")}</th>
                  <th>{t("desk.hires.when")}</th>
                  <th>{t("desk.hires.state")}</th>
                  <th>{t("desk.hires.money")}</th>
                </tr>
              </thead>
              <tbody>
                {hires.map((hire) => (
                  <HireRow key={hire.id} hire={hire} />
                ))}
              </tbody>
            </table>
          </ScrollX>
        )}
        {found.hasNextPage && (
          <Button onPress={() => void found.fetchNextPage()} isPending={found.isFetchingNextPage}>
            {t("desk.hires.more")}
          </Button>
        )}
      </section>
    </>
  );
}
