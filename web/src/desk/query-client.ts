import { QueryClient } from "@tanstack/react-query";
import { Failure } from "../api/failure.ts";

const mayHelp = (failure: unknown): boolean =>
  failure instanceof Failure && (failure.status === 0 || failure.status >= 500);

/** Answers are kept for a short while; a "no" of the server is never asked again by itself. */
export const queries = new QueryClient({
  defaultOptions: {
    queries: {
      staleTime: 15_000,
      refetchOnWindowFocus: true,
      retry: (count, failure) => mayHelp(failure) && count < 2,
      networkMode: "always",
    },
    mutations: { networkMode: "always", retry: false },
  },
});
