/** For tests only: opens a store, bringing its tables up to date, and says so. */
import { openDatabase } from "../store/open-database.ts";

const dataFolder = process.env.DRILL_DATA;
if (dataFolder === undefined) throw new Error("DRILL_DATA: expected a folder");
process.stdout.write("opening\n");
const database = await openDatabase({ dataFolder });
process.stdout.write("ready store\n");
// until it is ended
setInterval(() => void database.kind, 1000);
