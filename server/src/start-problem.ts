import { SQLITE_FILE } from "./store/open-database.ts";

const DATA = "--data or SETFAIR_DATA";
const HOST = "--host or SETFAIR_HOST";

/** What was expected of a folder, by the code of what the system said. */
const OF_FOLDER: Readonly<Record<string, string>> = {
  EACCES: "a folder that this user may write to",
  EPERM: "a folder that this user may write to",
  EROFS: "a folder that can be written to; this disk is read-only",
  ENOENT: "a folder that is there or can be made",
  ENOTDIR: "a folder; a file stands there",
  EISDIR: `a folder in which ${SQLITE_FILE} is a file`,
  ELOOP: "a folder; links go round in a circle there",
  ENAMETOOLONG: "a shorter name of a folder",
  EINVAL: "a name that a folder can have",
  ENOSPC: "room on the disk; it is full",
  EDQUOT: "room on the disk; what this user may use of it is used up",
};
/** Likewise of the database in it, by the first part of SQLite's code. */
const OF_DATABASE: Readonly<Record<string, string>> = {
  SQLITE_NOTADB: `${SQLITE_FILE} to be a database; what stands there is none. Restore a backup into an empty folder`,
  SQLITE_CORRUPT: `a whole database; ${SQLITE_FILE} is broken. Restore a backup into an empty folder`,
  SQLITE_CANTOPEN: `${SQLITE_FILE} to be a file that this user may open`,
  SQLITE_READONLY: `${SQLITE_FILE} to be a file that this user may write to`,
  SQLITE_PERM: `${SQLITE_FILE} to be a file that this user may write to`,
  SQLITE_FULL: "room on the disk; it is full",
  SQLITE_BUSY: `${SQLITE_FILE} to be free; another program holds it`,
  SQLITE_IOERR: `a disk that can be read and written; ${SQLITE_FILE} cannot`,
};

const codeOf = (error: unknown): string =>
  typeof error === "object" && error !== null && "code" in error ? String(error.code) : "";
const pathOf = (error: unknown): string =>
  typeof error === "object" && error !== null && "path" in error ? ` (${String(error.path)})` : "";

/**
 * What kept the data folder from being opened, as one line that names the setting and what was expected; the same error
 * where nothing better is known. What already names its setting stays as it is.
 */
export function problemOfData(error: unknown, dataFolder: string): unknown {
  const code = codeOf(error);
  const expected = OF_FOLDER[code] ?? OF_DATABASE[code.split("_").slice(0, 2).join("_")];
  if (expected === undefined) return error;
  return new Error(`${DATA}: expected ${expected} (${dataFolder})`, { cause: error });
}

/** Likewise what kept a PostgreSQL server from being used. */
export function problemOfServer(error: unknown): unknown {
  // codes of the system, and classes of the database's own: connection, sign-in, no such database
  if (!/^(E[A-Z]+|08...|28...|3D000)$/.test(codeOf(error))) return error;
  const said = error instanceof Error && error.message !== "" ? error.message : codeOf(error);
  return new Error(`SETFAIR_DATABASE_URL: expected a PostgreSQL server that lets us in (${said})`, {
    cause: error,
  });
}

/** Likewise what kept it from listening. */
export function problemOfListening(error: unknown, host: string, port: number): unknown {
  switch (codeOf(error)) {
    case "EADDRINUSE":
      return new Error(`--port or PORT: expected a port that is free; ${port} is taken by another program`, {
        cause: error,
      });
    case "EACCES":
    case "EPERM":
      return new Error(`--port or PORT: expected a port that this user may listen on (${port})`, {
        cause: error,
      });
    case "EADDRNOTAVAIL":
    case "ENOTFOUND":
    case "EAI_AGAIN":
    case "EINVAL":
      return new Error(`${HOST}: expected an address of this machine (${host})`, { cause: error });
    default:
      return error;
  }
}

/** Likewise where certificate and key were read and cannot be used. */
export function problemOfCertificate(error: unknown): unknown {
  if (!/^ERR_(OSSL|SSL|TLS|CRYPTO)/.test(codeOf(error))) return error;
  return new Error("--cert and --key: expected a certificate in PEM and the key that belongs to it", {
    cause: error,
  });
}

/** Likewise what kept a certificate or its key from being read. */
export function problemOfPem(error: unknown, option: "--cert" | "--key"): unknown {
  return new Error(`${option}: expected a file in PEM that can be read${pathOf(error)}`, { cause: error });
}
