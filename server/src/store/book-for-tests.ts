/** For tests only: another process that books what it is given, as fast as it can. */
import { openDatabase } from "./open-database.ts";
import type { BookingRow, Scope } from "./types.ts";

const given = JSON.parse(process.env.BOOK ?? "{}") as {
  dataFolder: string;
  url?: string;
  scope: Scope;
  bookings: readonly BookingRow[];
};
const database = await openDatabase({
  dataFolder: given.dataFolder,
  ...(given.url === undefined ? {} : { url: given.url }),
});
for (const booking of given.bookings) await database.storeFor(given.scope).bookings.book(booking);
await database.close();
