import { DEMO_SIGN_INS } from "@setfair/demo";

/** Signs in at a server of the invented firm as its manager; gives the cookies to send. */
export async function signIn(url: string): Promise<string> {
  const { login, password } = DEMO_SIGN_INS[0];
  const answer = await fetch(`${url}/api/session`, {
    method: "POST",
    headers: { "content-type": "application/json", origin: url },
    body: JSON.stringify({ login, password }),
  });
  return answer.headers
    .getSetCookie()
    .map((one) => one.split(";")[0])
    .join("; ");
}
