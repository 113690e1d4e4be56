import type { DemoSignIn } from "@setfair/server";

/** Sign-ins of the invented firm. They are printed on purpose and exist nowhere else. */
export const DEMO_SIGN_INS = [
  { login: "manager", password: "marlow-tarn-manager", name: "R. Okafor", role: "manager" },
  { login: "desk", password: "marlow-tarn-desk", name: "Mara Ellwood", role: "desk" },
  { login: "yard", password: "marlow-tarn-yard", name: "Tom Braithe", role: "yard" },
] as const satisfies readonly DemoSignIn[];
