import { useQuery, useQueryClient } from "@tanstack/react-query";
import { client, type Schemas } from "../api/client.ts";
import { Failure, take } from "../api/failure.ts";
import { writeDistancesIn, writeTimesIn } from "../parts/words.ts";

export type Session = Schemas["Session"];

async function readSession(): Promise<Session | null> {
  try {
    const session = await take(client.GET("/api/session"));
    writeTimesIn(session.depot.timeZone);
    writeDistancesIn(session.depot.distances);
    return session;
  } catch (failure) {
    if (failure instanceof Failure && failure.status === 401) return null;
    throw failure;
  }
}

/** Who is signed in here; null where nobody is. */
export function useSession() {
  return useQuery({ queryKey: ["session"], queryFn: readSession, staleTime: 60_000 });
}

/** The session of a page that is only shown to someone who is signed in. */
export function useSignedIn(): Session {
  const session = useQueryClient().getQueryData<Session | null>(["session"]);
  if (session === null || session === undefined) throw new Error("this page is shown only when signed in");
  return session;
}
