import type { Kysely } from "kysely";

interface Depots {
  depot: { firm_id: string; depot_id: string; document: string };
}

const WEEK = ["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"];

/** One pair of hours for all days becomes hours for each day of the week, and closed days: none yet. */
export async function openingHours(db: Kysely<Depots>): Promise<void> {
  const rows = await db.selectFrom("depot").select(["firm_id", "depot_id", "document"]).execute();
  for (const { firm_id, depot_id, document } of rows) {
    const { opens, closes, ...rest } = JSON.parse(document) as Record<string, unknown>;
    if (typeof opens !== "string" || typeof closes !== "string") continue;
    const week = Object.fromEntries(WEEK.map((day) => [day, { opens, closes }]));
    await db
      .updateTable("depot")
      .set({ document: JSON.stringify({ ...rest, hours: { week, closed: [] } }) })
      .where("firm_id", "=", firm_id)
      .where("depot_id", "=", depot_id)
      .execute();
  }
}
