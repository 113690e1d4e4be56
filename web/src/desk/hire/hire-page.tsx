import { lazy, Suspense } from "react";
import { Link } from "wouter";
import { classes, Empty, GlassPill, LinkButton, Loading, PlainPill } from "../../parts/index.ts";
import { dateText, t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { useSignedIn } from "../session.ts";
import { usePageTitle } from "../use-page-title.ts";
import { placeOfHire } from "../where.ts";
import { HireAside } from "./hire-aside.tsx";
import { type HirePageData, useHire } from "./use-hire.ts";
import "./hire.css";

const PARTS = {
  now: lazy(() => import("./now/now-part.tsx")),
  people: lazy(() => import("./people/people-part.tsx")),
  trip: lazy(() => import("./trip/trip-part.tsx")),
  load: lazy(() => import("./load/load-part.tsx")),
  abroad: lazy(() => import("./abroad/abroad-part.tsx")),
  notes: lazy(() => import("./notes/notes-part.tsx")),
  briefing: lazy(() => import("./briefing/briefing-part.tsx")),
  money: lazy(() => import("./money/money-part.tsx")),
  handover: lazy(() => import("./handover/handover-part.tsx")),
  back: lazy(() => import("./back/back-part.tsx")),
  change: lazy(() => import("./change/change-part.tsx")),
} as const;
type PartId = keyof typeof PARTS;
/** What a part shows or asks for needs this right; the others are for everybody. */
const RIGHT_OF: Readonly<Partial<Record<PartId, string>>> = {
  people: "licence.read",
  money: "money.see",
  change: "hire.write",
};
const PART_IDS = Object.keys(PARTS) as PartId[];
const isPart = (part: string): part is PartId => part in PARTS;

/** The next thing to do with a hire, by its stage. */
const NEXT: Readonly<Partial<Record<HirePageData["hire"]["stage"], PartId>>> = {
  enquiry: "money",
  quote: "money",
  booked: "handover",
  handedOver: "back",
  onHire: "back",
  returned: "back",
  settled: "back",
};

export default function HirePage({ id, part }: { readonly id: string; readonly part: string }) {
  const hire = useHire(id);
  if (hire.isPending) return <Loading />;
  if (hire.isError) return <FailureNote failure={hire.error} onAgain={() => void hire.refetch()} />;
  return <Hire page={hire.data} part={isPart(part) ? part : "now"} />;
}

function Hire({ page, part }: { readonly page: HirePageData; readonly part: PartId }) {
  const { hire } = page;
  usePageTitle(hire.customer);
  const { may } = useSignedIn();
  const isOpen = (id: PartId) => may.includes(RIGHT_OF[id] ?? "hire.see");
  const Part = PARTS[part];
  return (
    <>
      <Head page={page} />
      <div className={classes("hire-columns", part === "now" && "hire-columns-now")}>
        <HireAside page={page} />
        <nav className="tabs" aria-label={t("hire.parts")}>
          {PART_IDS.filter(isOpen).map((id) => (
            <Link
              key={id}
              href={`${placeOfHire(hire.id)}/${id}`}
              className={classes("tab", id === part && "tab-here")}
              aria-current={id === part ? "page" : undefined}
            >
              {t(`hire.part.${id}`)}
            </Link>
          ))}
        </nav>
        <div className="stack hire-part">
          <Suspense fallback={<Loading />}>{isOpen(part) ? <Part page={page} /> : <NotYours />}</Suspense>
        </div>
      </div>
    </>
  );
}

function NotYours() {
  return (
    <section className="card">
      <Empty>{t("whoSees.notYours")}</Empty>
    </section>
  );
}

function Head({ page }: { readonly page: HirePageData }) {
  const { hire, customer } = page;
  const { may } = useSignedIn();
  const next = may.includes("hire.write") ? NEXT[hire.stage] : undefined;
  return (
    <div className="page-head hire-head">
      <div className="hire-title">
        <h1>
          {hire.customer}
          {hire.vehicle !== null && ` · ${hire.vehicle.name} ${hire.vehicle.registration}`}
        </h1>
        {hire.glass === null ? (
          <PlainPill>{t(`stage.${hire.stage}`)}</PlainPill>
        ) : (
          <GlassPill state={hire.glass} isSoFar={hire.gatesLater > 0} />
        )}
        <p className="quiet">
          {t("hire.head", {
            reference: hire.reference,
            stage: t(`stage.${hire.stage}`),
            from: dateText(hire.from, "fullTime"),
            to: dateText(hire.to, "fullTime"),
            people: hire.people,
            dogs: hire.dogs,
          })}
        </p>
      </div>
      <div className="page-acts">
        {customer.telephone !== undefined && customer.telephone !== "" && (
          <LinkButton href={`tel:${customer.telephone.replaceAll(" ", "")}`}>
            {t("hire.call", { number: customer.telephone })}
          </LinkButton>
        )}
        {may.includes("customer.see") && customer.name !== "" && (
          <LinkButton href={`/messages/hire/${encodeURIComponent(hire.id)}`}>
            {t("messages.write")}
          </LinkButton>
        )}
        {next !== undefined && (
          <LinkButton href={`${placeOfHire(hire.id)}/${next}`} look="main">
            {t(`hire.next.${hire.stage}`)}
          </LinkButton>
        )}
      </div>
    </div>
  );
}
