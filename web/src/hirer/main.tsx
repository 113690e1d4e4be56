import "./guide-words.ts";
import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { registerWorker } from "../offline/register-worker.ts";
import "../parts/styles.ts";
import "./guide.css";
import "./faults.css";
import "./after/after.css";
import { GuideApp } from "./app.tsx";

const token = /^\/g\/([^/?#]+)/.exec(location.pathname)?.[1] ?? "";

registerWorker("guide");
createRoot(document.getElementById("root")!).render(
  <StrictMode>
    <GuideApp token={decodeURIComponent(token)} />
  </StrictMode>,
);
