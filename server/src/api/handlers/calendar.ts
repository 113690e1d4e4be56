import type { z } from "zod";
import { hashToken, newToken } from "../../auth/tokens.ts";
import { feedCalendar } from "../../calendar/feed-calendar.ts";
import { importCalendar } from "../../calendar/import-calendar.ts";
import { asDocument, type VehicleDocument } from "../../desk/documents.ts";
import { accountNames } from "../../desk/names.ts";
import type { FeedRow } from "../../store/message-types.ts";
import type { Store } from "../../store/types.ts";
import type { Handlers } from "../call.ts";
import { badField, Refusal } from "../refusal.ts";
import type { calendarFeedSchema } from "../schemas/calendar.ts";

type FeedAnswer = z.input<typeof calendarFeedSchema>;

async function aboutText(
  store: Store,
  { kind, about }: Pick<FeedRow, "kind" | "about">,
): Promise<string | null> {
  if (kind === "depot") return null;
  if (kind === "hire") return (await store.hires.get(about))?.number ?? about;
  const version = (await store.vehicles.versions(about)).at(-1);
  if (version === undefined) return about;
  const { name, registration } = asDocument<VehicleDocument>(version.document).description;
  return `${name} ${registration}`;
}

async function feedAnswer(store: Store, feed: FeedRow, nameOf: (id: string) => string): Promise<FeedAnswer> {
  const { id, kind, withNames, at, revokedAt } = feed;
  return { id, kind, about: await aboutText(store, feed), withNames, by: nameOf(feed.by), at, revokedAt };
}

/** What a link is about must be there; the whole diary is about nothing else. */
async function checkAbout(store: Store, kind: FeedRow["kind"], about: string | undefined): Promise<string> {
  if (kind === "depot") {
    if (about !== undefined) throw badField("about", "expected nothing, for the whole diary");
    return "";
  }
  const isThere =
    about !== undefined &&
    (kind === "hire"
      ? (await store.hires.get(about)) !== null
      : (await store.vehicles.versions(about)).length > 0);
  if (!isThere) throw badField("about", `expected the id of a ${kind} of this depot`);
  return about;
}

export const calendarHandlers = {
  async readCalendar({ context, params, reply }) {
    const { token } = params;
    const found = token.includes("\0") ? null : await context.database.system.calendarFeed(hashToken(token));
    if (found === null) throw new Refusal("linkUnusable");
    const store = context.database.storeFor(found.scope);
    const text = await feedCalendar(store, found.feed, context.now());
    reply
      .header("cache-control", "private, no-store")
      .header("content-disposition", 'inline; filename="setfair.ics"');
    await reply.type("text/calendar; charset=utf-8").send(text);
    return undefined;
  },

  async listCalendarFeeds({ signed }) {
    const { store } = signed;
    const nameOf = await accountNames(store);
    const feeds: FeedAnswer[] = [];
    for (const feed of await store.feeds.list()) feeds.push(await feedAnswer(store, feed, nameOf));
    return { feeds };
  },

  async makeCalendarFeed({ context, signed, body }) {
    const { store, account } = signed;
    const { kind, withNames } = body;
    const about = await checkAbout(store, kind, body.about);
    const { token, tokenHash } = newToken();
    const feed = await store.within(async (inner) => {
      const made = await inner.feeds.create({ kind, about, withNames, by: account.id, tokenHash });
      const document = { feed: made.id, kind, withNames };
      await inner.audit.add({ by: account.id, act: "calendar.linkMade", about: about || "diary", document });
      return made;
    });
    return {
      feed: await feedAnswer(store, feed, await accountNames(store)),
      url: `${context.publicUrl}/api/calendar/${token}`,
    };
  },

  async endCalendarFeed({ signed, params }) {
    const { store, account } = signed;
    await store.within(async (inner) => {
      if (!(await inner.feeds.revoke(params.id))) throw new Refusal("notFound");
      const document = { feed: params.id };
      await inner.audit.add({ by: account.id, act: "calendar.linkEnded", about: params.id, document });
    });
    return { done: true as const };
  },

  async importCalendar({ context, signed, params, body }) {
    const { store, account } = signed;
    if ((await store.vehicles.versions(params.id)).length === 0) throw new Refusal("notFound");
    return importCalendar(store, {
      vehicleId: params.id,
      text: body.text,
      kind: body.kind,
      confirm: body.confirm ?? null,
      by: account.id,
      now: context.now(),
    });
  },
} satisfies Partial<Handlers>;
