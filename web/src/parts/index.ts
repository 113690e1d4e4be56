/** The parts that every page is made of. Styles: import `./styles.ts` once. */
export { Button } from "./button.tsx";
export { ChoiceField } from "./choice-field.tsx";
export { classes } from "./classes.ts";
export { DateField, DateTimeField } from "./date-field.tsx";
export { Dialog } from "./dialog.tsx";
export { FigureSums, FigureTap, type ShownFigure } from "./figure-tap.tsx";
export {
  FindingLine,
  FindingsList,
  FindingText,
  findingWords,
} from "./findings-list.tsx";
export { GlassDial } from "./glass-dial.tsx";
export { GlassPill, glassText, PlainPill } from "./glass-pill.tsx";
export { LinkButton } from "./link-button.tsx";
export { NumberField } from "./number-field.tsx";
export { Empty, Loading, Problem } from "./page-state.tsx";
export { RoadOfStops, type RoadStop } from "./road-of-stops.tsx";
export { ScrollX } from "./scroll-x.tsx";
export { SelectField } from "./select-field.tsx";
export { SignatureField, type Stroke } from "./signature-field.tsx";
export { StoreStrip } from "./store-strip.tsx";
export { TextField } from "./text-field.tsx";
export { TickField } from "./tick-field.tsx";
