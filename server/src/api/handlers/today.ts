import { listSummaries } from "../../desk/list-summaries.ts";
import { dateOf, localOf } from "../../desk/local-time.ts";
import type { HireSummary } from "../../desk/summary.ts";
import type { Handlers } from "../call.ts";

const WORST_FIRST = ["cannotGo", "notYet", "goesWithConditions", "readyWithNotes", "ready"];
const rank = ({ glass }: HireSummary) => (glass === null ? 9 : WORST_FIRST.indexOf(glass));

export const todayHandlers = {
  async today({ context, signed, query }) {
    const { store } = signed;
    const depot = await store.depot.get();
    const now = localOf(context.now().toISOString(), depot.timeZone);
    const date = query.date ?? dateOf(now);
    const open = await store.hires.list({
      stages: ["enquiry", "quote", "booked", "handedOver", "onHire", "returned", "settled"],
      limit: 200,
    });
    const all = await listSummaries(store, open.rows, context.now());
    const at = (...stages: readonly string[]) => all.filter(({ stage }) => stages.includes(stage));
    const road = at("handedOver", "onHire");
    const out = at("booked").filter(({ from }) => dateOf(from) === date);
    const held = at("booked").filter(
      ({ from, glass }) => dateOf(from) <= date && (glass === "cannotGo" || glass === "notYet"),
    );
    const late = road.filter(({ to }) => to < now);
    const blockers = [
      ...late.map((hire) => ({ hireId: hire.id, hire, why: "late" as const })),
      ...held
        .sort((a, b) => rank(a) - rank(b))
        .map((hire) => ({ hireId: hire.id, hire, why: "glass" as const })),
    ];
    return {
      date,
      now,
      out: [...out, ...road.filter(({ from }) => dateOf(from) === date)],
      back: [
        ...road.filter(({ to }) => dateOf(to) <= date),
        ...at("returned").filter(({ to }) => dateOf(to) === date),
      ],
      onTheRoad: road.filter(({ to }) => dateOf(to) > date),
      blockers,
      open: {
        enquiries: at("enquiry").length,
        quotes: at("quote").length,
        toSettle: at("returned", "settled").length,
      },
      enquiries: at("enquiry", "quote"),
      toSettle: at("returned", "settled"),
    };
  },
} satisfies Partial<Handlers>;
