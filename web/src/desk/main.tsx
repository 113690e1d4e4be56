import "../parts/all-words.ts";
import "../parts/styles.ts";
import "./desk.css";
import { QueryClientProvider } from "@tanstack/react-query";
import { StrictMode } from "react";
import { I18nProvider } from "react-aria-components";
import { createRoot } from "react-dom/client";
import { words } from "../parts/words.ts";
import { App } from "./app.tsx";
import { queries } from "./query-client.ts";

const root = document.getElementById("root");
if (root === null) throw new Error("the page has no #root");
createRoot(root).render(
  <StrictMode>
    <I18nProvider locale={words().locale}>
      <QueryClientProvider client={queries}>
        <App />
      </QueryClientProvider>
    </I18nProvider>
  </StrictMode>,
);
