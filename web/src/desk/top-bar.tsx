import { useMutation } from "@tanstack/react-query";
import { useEffect, useRef } from "react";
import { Link, useLocation, useRoute } from "wouter";
import { client } from "../api/client.ts";
import { take } from "../api/failure.ts";
import { Button, classes } from "../parts/index.ts";
import { t } from "../parts/words.ts";
import { queries } from "./query-client.ts";
import type { Session } from "./session.ts";
import { useSlash } from "./use-slash.ts";

function BarLink({
  to,
  under,
  children,
}: {
  readonly to: string;
  readonly under: string | RegExp;
  readonly children: string;
}) {
  const [isHere] = useRoute(under);
  return (
    <Link
      href={to}
      className={classes("bar-link", isHere && "bar-link-here")}
      aria-current={isHere ? "page" : undefined}
    >
      {children}
    </Link>
  );
}

/** Name, the pages of the desk, and who is signed in. */
export function TopBar({ session }: { readonly session: Session }) {
  const [place, go] = useLocation();
  useSlash(go);
  const links = useRef<HTMLElement>(null);
  // on a narrow screen the pages stand in one row that scrolls: the one that is open is in view
  // biome-ignore lint/correctness/useExhaustiveDependencies: looked for again on every page
  useEffect(() => {
    const row = links.current;
    const here = row?.querySelector<HTMLElement>("[aria-current=page]");
    if (row !== null && here) row.scrollLeft = here.offsetLeft - row.offsetLeft - row.clientWidth / 3;
  }, [place]);
  const signOut = useMutation({
    mutationFn: () => take(client.DELETE("/api/session")),
    onSettled: () => {
      queries.clear();
      window.location.assign("/");
    },
  });
  return (
    <header className="bar">
      <Link href="/" className="bar-name">
        {t("desk.name")}
      </Link>
      <nav aria-label={t("desk.pages")} className="bar-links" ref={links}>
        <BarLink to="/" under="/">
          {t("desk.nav.today")}
        </BarLink>
        <BarLink to="/diary" under="/diary">
          {t("desk.nav.diary")}
        </BarLink>
        {session.may.includes("customer.see") && (
          <BarLink to="/enquiries" under={/^\/enquir(?:y|ies)$/}>
            {t("rates.enquiries")}
          </BarLink>
        )}
        <BarLink to="/hires" under="/hires/*?">
          {t("desk.nav.hires")}
        </BarLink>
        <BarLink to="/help" under="/help/*?">
          {t("desk.nav.help")}
        </BarLink>
        <BarLink to="/fleet" under="/fleet/*?">
          {t("desk.nav.fleet")}
        </BarLink>
        {session.may.includes("money.see") && (
          <BarLink to="/money" under="/money">
            {t("moneyPage.nav")}
          </BarLink>
        )}
        <BarLink to="/rules" under="/rules/*?">
          {t("desk.nav.rules")}
        </BarLink>
        <BarLink to="/more" under="/more">
          {t("import.nav")}
        </BarLink>
        <a href="/yard" className="bar-link">
          {t("desk.nav.yard")}
        </a>
      </nav>
      <span className="bar-who">
        {session.demo && <span className="bar-demo">{t("desk.demo")}</span>}
        <Link href="/own" className="bar-link bar-person">
          {t("desk.who", { depot: session.depot.name, person: session.user.name })}
        </Link>
        <Button look="quiet" onPress={() => signOut.mutate()}>
          {t("desk.signOut")}
        </Button>
      </span>
    </header>
  );
}
