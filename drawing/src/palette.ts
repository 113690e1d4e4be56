/** Colours of the look; a page may restyle the classes, a document takes these as they are. */
export const PALETTE = {
  ink: "#0f3440",
  paper: "#fffdf7",
  chalk: "#f6f3ea",
  sky: "#e2edee",
  brass: "#8a5d12",
  brassSoft: "#f0e2c4",
  line: "#d9d3c3",
  red: "#a4211b",
} as const;
