/** A piece of an SVG picture as plain data: the web renders it, documents print it, tests read it. */
export interface SvgNode {
  readonly tag: string;
  /** presentation attributes only, never `style`: a strict content security policy refuses inline styles */
  readonly attributes: Readonly<Record<string, string | number>>;
  readonly children: readonly (SvgNode | string)[];
}

/** Makes a node; attributes that are undefined are left out. */
export function svg(
  tag: string,
  attributes: Readonly<Record<string, string | number | undefined>> = {},
  children: readonly (SvgNode | string)[] = [],
): SvgNode {
  const kept: Record<string, string | number> = {};
  for (const [name, value] of Object.entries(attributes)) if (value !== undefined) kept[name] = value;
  return { tag, attributes: kept, children };
}

const escapeText = (text: string): string =>
  // control characters are not allowed in XML at all
  Array.from(text)
    .filter((letter) => letter >= " " || letter === "\n" || letter === "\t")
    .join("")
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");

/** The picture as SVG text for a document or a file; well-formed XML. */
export function svgText(node: SvgNode): string {
  const attributes =
    node.tag === "svg" ? { xmlns: "http://www.w3.org/2000/svg", ...node.attributes } : node.attributes;
  const head = Object.entries(attributes)
    .map(([name, value]) => ` ${name}="${escapeText(String(value))}"`)
    .join("");
  if (node.children.length === 0) return `<${node.tag}${head}/>`;
  const inner = node.children
    .map((child) => (typeof child === "string" ? escapeText(child) : svgText(child)))
    .join("");
  return `<${node.tag}${head}>${inner}</${node.tag}>`;
}
