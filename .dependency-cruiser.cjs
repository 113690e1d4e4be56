// Layers, lowest first: engine and records; drawing and words; server and web; cli, demo, bench, e2e.
// An arrow never points up, and type-only imports count.
const above = {
  engine: ["records", "drawing", "words", "server", "web", "cli", "demo", "bench", "e2e"],
  records: ["engine", "drawing", "words", "server", "web", "cli", "demo", "bench", "e2e"],
  drawing: ["records", "words", "server", "web", "cli", "demo", "bench", "e2e"],
  words: ["records", "drawing", "server", "web", "cli", "demo", "bench", "e2e"],
  server: ["web", "cli", "demo", "bench", "e2e"],
  web: ["server", "cli", "demo", "bench", "e2e"],
  demo: ["web", "cli", "bench", "e2e"],
  cli: ["web", "bench", "e2e"],
  bench: ["web", "cli", "e2e"],
};
const TESTS = "\\.test\\.tsx?$";

/** @type {import('dependency-cruiser').IConfiguration} */
module.exports = {
  forbidden: [
    ...Object.entries(above).map(([name, higher]) => ({
      name: `${name}-looks-no-higher`,
      severity: "error",
      from: { path: `^${name}/`, pathNot: TESTS },
      to: { path: `^(${higher.join("|")})/` },
    })),
    {
      name: "pure-packages-touch-no-node-core",
      severity: "error",
      from: { path: "^(engine|records|drawing|words)/src/", pathNot: TESTS },
      to: { dependencyTypes: ["core"] },
    },
    {
      name: "systems-never-import-each-other",
      severity: "error",
      from: { path: "^engine/src/systems/([^/]+)/" },
      to: { path: "^engine/src/systems/[^/]+/", pathNot: "^engine/src/systems/$1/" },
    },
    {
      name: "systems-and-below-know-no-rooms",
      severity: "error",
      from: { path: "^engine/src/(base|sources|formulas|climate|stores|systems|vehicle)/", pathNot: TESTS },
      to: { path: "^engine/src/rooms/" },
    },
    {
      name: "what-is-known-of-the-world-knows-no-vehicle",
      severity: "error",
      from: { path: "^engine/src/(sources|formulas|climate|rules)/", pathNot: TESTS },
      to: { path: "^engine/src/(stores|systems|vehicle)/" },
    },
    {
      name: "stores-know-of-systems-the-contract-only",
      severity: "error",
      from: { path: "^engine/src/stores/", pathNot: TESTS },
      to: { path: "^engine/src/(vehicle/|systems/(?!contract))" },
    },
    {
      name: "systems-know-no-vehicle",
      severity: "error",
      from: { path: "^engine/src/systems/", pathNot: TESTS },
      to: { path: "^engine/src/vehicle/" },
    },
    {
      name: "base-knows-nothing-else",
      severity: "error",
      from: { path: "^engine/src/base/", pathNot: TESTS },
      to: { path: "^engine/src/(?!base/)" },
    },
    {
      name: "the-trip-is-light-enough-for-a-phone",
      severity: "error",
      from: { path: "^engine/src/rooms/trip/", pathNot: TESTS },
      to: { path: "^engine/src/rooms/(?!trip/|situation)" },
    },
    {
      name: "the-guide-holds-no-desk",
      severity: "error",
      from: { path: "^web/src/hirer/" },
      to: { path: "^web/src/(desk|yard)/" },
    },
    {
      name: "only-the-store-speaks-to-the-database",
      severity: "error",
      from: { path: "^server/src/", pathNot: `^server/src/(store|jobs)/|${TESTS}` },
      to: { path: "node_modules/(kysely|pg|better-sqlite3)/" },
    },
    { name: "no-circles", severity: "error", from: {}, to: { circular: true } },
    {
      name: "nothing-unresolved",
      severity: "error",
      from: {},
      // pdfmake/interfaces is a file of types in another package: nothing of it is there when it runs
      to: { couldNotResolve: true, pathNot: "^virtual:|^pdfmake/interfaces$" },
    },
  ],
  options: {
    doNotFollow: { path: "node_modules" },
    // our own products only: a package that is built into its dist must still be seen to be imported
    exclude: { path: `^[a-z0-9]+/(dist|out)/|${TESTS}` },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: "tsconfig.base.json" },
    enhancedResolveOptions: {
      conditionNames: ["setfair-source", "import", "require", "node", "default", "types"],
      exportsFields: ["exports"],
      extensions: [".ts", ".tsx", ".mjs", ".js", ".cjs", ".json", ".css"],
    },
  },
};
