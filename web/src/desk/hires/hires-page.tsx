import { useInfiniteQuery } from "@tanstack/react-query";
import { useDeferredValue } from "react";
import { Link } from "wouter";
import { client, type Schemas } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import {
  Button,
  DateField,
  Empty,
  LinkButton,
  Loading,
  ScrollX,
  SelectField,
  TextField,
  TickField,
} from "../../parts/index.ts";
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
const WHICH = ["inHand", "over", "all"] as const;
interface Search {
  readonly q: string;
  readonly stage: Stage | "all";
  readonly which: (typeof WHICH)[number];
  readonly ended: boolean;
  /** days, or empty */
  readonly from: string;
  readonly to: string;
}
const NOTHING: Search = { q: "", stage: "all", which: "inHand", ended: false, from: "", to: "" };

function useHires({ q, stage, which, ended, from, to }: Search) {
  const words = useDeferredValue(q.trim());
  return useInfiniteQuery({
    queryKey: ["hires", words, stage, which, ended, from, to],
    initialPageParam: "",
    queryFn: ({ pageParam }) =>
      take(
        client.GET("/api/hires", {
          params: {
            query: {
              ...(words === "" ? { which } : { q: words }),
              ...(from === "" ? {} : { from }),
              ...(to === "" ? {} : { to }),
              ended: ended ? "true" : "false",
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

const isSearched = (search: Search): boolean =>
  Object.entries(NOTHING).some(([name, value]) => search[name as keyof Search] !== value);

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
        <span className="hires-marks">
          <HirePill hire={hire} />
          {hire.late !== null && (
            <span className="hires-late">{t(hire.late === "back" ? "hires.lateBack" : "hires.lateOut")}</span>
          )}
          {hire.toActOn > 0 && <span className="hires-late">{t("hires.toActOn", { n: hire.toActOn })}</span>}
        </span>
      </td>
      <td className="quiet num">{owedText(hire)}</td>
    </tr>
  );
}

/** Every hire, found by name, registration, number or telephone. */
export default function HiresPage() {
  usePageTitle(t("desk.nav.hires"));
  const { value, set } = useDraft<Search>("hires", NOTHING);
  // a search kept from before may lack what was added since
  const search = { ...NOTHING, ...value };
  const found = useHires(search);
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
        <search className="hires-search" id="hires-search">
          <TextField
            label={t("desk.hires.search")}
            note={t("hires.slash")}
            type="search"
            value={search.q}
            onChange={(q) => set({ ...search, q })}
          />
          <SelectField
            label={t("hires.which")}
            value={search.which}
            options={WHICH.map((which) => ({ value: which, label: t(`hires.which.${which}`) }))}
            onChange={(which) => set({ ...search, which })}
          />
          <SelectField
            label={t("desk.hires.stage")}
            value={search.stage}
            options={stages}
            onChange={(stage) => set({ ...search, stage })}
          />
          <DateField
            label={t("hires.from")}
            value={search.from}
            onChange={(from) => set({ ...search, from })}
          />
          <DateField label={t("hires.to")} value={search.to} onChange={(to) => set({ ...search, to })} />
          <TickField value={search.ended} onChange={(ended) => set({ ...search, ended })}>
            {t("hires.ended")}
          </TickField>
        </search>
        {isSearched(search) && (
          <div className="row">
            <Button look="quiet" onPress={() => set(NOTHING)}>
              {t("hires.clear")}
            </Button>
          </div>
        )}
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
