import type { Words } from "@setfair/words";
import type { Content } from "pdfmake/interfaces";
import { hirerOf } from "../../auth/hirer-links.ts";
import { may } from "../../auth/roles.ts";
import { PAPER_RIGHTS } from "../../auth/who-sees-what.ts";
import { partOf, readHireData } from "../../desk/hire-data.ts";
import { packOfHire } from "../../papers/day-pack.ts";
import { daySheet } from "../../papers/day-sheet.ts";
import { disputePack } from "../../papers/dispute-pack.ts";
import { picturesOf } from "../../papers/evidence/pictures.ts";
import { makePaper } from "../../papers/make-paper.ts";
import { wordsFor } from "../../papers/paper-call.ts";
import { renderPdf } from "../../papers/render-pdf.ts";
import type { Handlers } from "../call.ts";
import { dayOperations } from "../operations/day.ts";
import { Refusal } from "../refusal.ts";
import { showByRight } from "../show-by-right.ts";
import { readToday } from "./today.ts";

const asPdf = (name: string) =>
  ["content-disposition", `inline; filename="${name.replaceAll(/[^A-Za-z0-9.-]/g, "-")}.pdf"`] as const;

type DayCall = Pick<Parameters<Handlers["readDaySheet"]>[0], "context" | "signed" | "query" | "reply">;
type Day = Awaited<ReturnType<typeof readToday>>;

const showDay = showByRight(dayOperations.today);

/** The day sheet as a PDF, with what follows it. */
async function sendDay(
  { context, signed, query, reply }: DayCall,
  file: "day" | "pack",
  more: (day: Day, firm: string, words: Words) => Promise<Content[]>,
): Promise<undefined> {
  const depot = await signed.store.depot.get();
  const words = wordsFor({ depot });
  const day = showDay(await readToday(context, signed, query.date), signed.account.role) as Day;
  const { name } = await signed.store.firm.get();
  const on = words.dateText(day.date, "full");
  const content = [...daySheet(day, words), ...(await more(day, name, words))];
  const paper = { title: words.t("papers.title.day", { on }), from: name, reference: on, content };
  const pdf = await renderPdf(paper, words);
  reply.header("cache-control", "private, no-store").header(...asPdf(`${file}-${day.date}`));
  await reply.type("application/pdf").send(pdf);
  return undefined;
}

export const paperHandlers = {
  /** Each paper asks for a right of its own, beside the one that opens hires. */
  async readPaper({ context, signed, params, reply }) {
    const { store, account } = signed;
    if (!may(account.role, PAPER_RIGHTS[params.paper])) throw new Refusal("notAllowed");
    const data = await readHireData(store, params.id, context.now());
    const words = wordsFor(data);
    const pictures = picturesOf(context.files, signed.store);
    const withoutAddress = !may(account.role, "customer.see");
    const pdf = await makePaper(store, data, params.paper, words, pictures, withoutAddress);
    reply.header("cache-control", "private, no-store").header(...asPdf(`${data.row.number}-${params.paper}`));
    await reply.type("application/pdf").send(pdf);
    return undefined;
  },

  async readDisputePack({ context, signed, params, reply }) {
    const { store } = signed;
    const data = await readHireData(store, params.id, context.now());
    const pack = await disputePack({ data, store, files: context.files, words: wordsFor(data) });
    const name = `${data.row.number}-dispute`.replaceAll(/[^A-Za-z0-9.-]/g, "-");
    reply
      .header("cache-control", "private, no-store")
      .header("content-disposition", `attachment; filename="${name}.zip"`);
    await reply.type("application/zip").send(pack);
    return undefined;
  },

  /** By the link of the hire; the statement only once it was shown. */
  async readOwnPaper({ context, params, reply }) {
    const link = params.token.includes("\0") ? null : await hirerOf(context.database, params.token);
    if (link === null) throw new Refusal("linkUnusable");
    const store = context.database.storeFor(link.scope);
    const data = await readHireData(store, link.hireId, context.now());
    if (params.paper === "statement" && (partOf(data, "settlement")?.frozenAt ?? null) === null)
      throw new Refusal("notFound");
    const pictures = picturesOf(context.files, store);
    const pdf = await makePaper(store, data, params.paper, wordsFor(data), pictures);
    reply.header("cache-control", "private, no-store").header(...asPdf(`${data.row.number}-${params.paper}`));
    await reply.type("application/pdf").send(pdf);
    return undefined;
  },

  async readDaySheet(call) {
    return sendDay(call, "day", async () => []);
  },

  async readDayPack(call) {
    const { context, signed } = call;
    const { store } = signed;
    return sendDay(call, "pack", async (day, firm, words) => {
      const pictures = picturesOf(context.files, signed.store);
      const packs: Content[] = [];
      for (const [walk, hires] of [["out", day.out] as const, ["back", day.back] as const])
        for (const { id } of hires) {
          const data = await readHireData(store, id, context.now());
          packs.push(...(await packOfHire({ data, store, words, firm, pictures }, walk)));
        }
      return packs;
    });
  },
} satisfies Partial<Handlers>;
