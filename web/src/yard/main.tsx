import "../parts/all-words.ts";
import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { registerWorker } from "../offline/register-worker.ts";
import "../parts/styles.ts";
import "./yard.css";
import "./walk.css";
import "./viewfinder.css";
import { YardApp } from "./app.tsx";

registerWorker("yard");
createRoot(document.getElementById("root")!).render(
  <StrictMode>
    <YardApp />
  </StrictMode>,
);
