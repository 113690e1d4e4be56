/** Font and styles that every page takes; import it once, first. */
import "@fontsource-variable/atkinson-hyperlegible-next/wght.css";
import "./tokens.css";
import "./base.css";
import "./controls.css";
import "./shown.css";
