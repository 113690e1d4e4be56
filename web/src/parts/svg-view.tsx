import type { SvgNode } from "@setfair/drawing";
import { createElement, type ReactNode } from "react";

const RENAMED: Readonly<Record<string, string>> = { class: "className", tabindex: "tabIndex" };

const attributeName = (name: string): string => {
  if (name.startsWith("aria-") || name.startsWith("data-")) return name;
  return RENAMED[name] ?? name.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase());
};

function render(node: SvgNode, key: number): ReactNode {
  const attributes = Object.fromEntries(
    Object.entries(node.attributes).map(([name, value]) => [attributeName(name), value]),
  );
  const children = node.children.map((child, index) =>
    typeof child === "string" ? child : render(child, index),
  );
  return createElement(node.tag, { ...attributes, key }, ...children);
}

/** Shows a drawing or an icon of ours; styles come from classes, never from the picture. */
export function SvgView({ node }: { readonly node: SvgNode }) {
  return <>{render(node, 0)}</>;
}
