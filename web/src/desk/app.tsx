import { lazy, type ReactNode, Suspense } from "react";
import { RouterProvider } from "react-aria-components";
import { Route, Switch, useLocation } from "wouter";
import { Loading, Problem } from "../parts/index.ts";
import { t } from "../parts/words.ts";
import { ErrorFence } from "./error-fence.tsx";
import { FailureNote } from "./failure-note.tsx";
import { useSession } from "./session.ts";
import { SignInPage } from "./start/sign-in-page.tsx";
import { TopBar } from "./top-bar.tsx";

const SetUpPage = lazy(() => import("./start/set-up-page.tsx"));
const TodayPage = lazy(() => import("./today/today-page.tsx"));
const EnquiryPage = lazy(() => import("./enquiry/enquiry-page.tsx"));
const EnquiriesPage = lazy(() => import("./enquiry/enquiries-page.tsx"));
const StockPage = lazy(() => import("./stock/stock-page.tsx"));
const TermsPage = lazy(() => import("./terms/terms-page.tsx"));
const PricesPage = lazy(() => import("./prices/prices-page.tsx"));
const DepotPage = lazy(() => import("./depot/depot-page.tsx"));
const FiguresPage = lazy(() => import("./figures/figures-page.tsx"));
const TimesPage = lazy(() => import("./times/times-page.tsx"));
const DiaryPage = lazy(() => import("./diary/diary-page.tsx"));
const HiresPage = lazy(() => import("./hires/hires-page.tsx"));
const HirePage = lazy(() => import("./hire/hire-page.tsx"));
const HelpPage = lazy(() => import("./help/help-page.tsx"));
const HelpHirePage = lazy(() => import("./help/help-hire-page.tsx"));
const MoneyPage = lazy(() => import("./money/money-page.tsx"));
const FleetPage = lazy(() => import("./fleet/fleet-page.tsx"));
const NewVehiclePage = lazy(() => import("./fleet/new-vehicle-page.tsx"));
const EditVehiclePage = lazy(() => import("./fleet/edit-vehicle-page.tsx"));
const VersionsPage = lazy(() => import("./fleet/versions-page.tsx"));
const DuePage = lazy(() => import("./fleet/due/due-page.tsx"));
const RulesPage = lazy(() => import("./rules/rules-page.tsx"));
const InsurancePage = lazy(() => import("./insurance/insurance-page.tsx"));
const MessagesPage = lazy(() => import("./messages/messages-page.tsx"));
const WritePage = lazy(() => import("./messages/write-page.tsx"));
const OutcomesPage = lazy(() => import("./outcomes/outcomes-page.tsx"));
const ImportPage = lazy(() => import("./import/import-page.tsx"));
const AccountsPage = lazy(() => import("./accounts/accounts-page.tsx"));
const OwnPage = lazy(() => import("./accounts/own-page.tsx"));
const MorePage = lazy(() => import("./more/more-page.tsx"));
const VehiclePage = lazy(() => import("./fleet/vehicle-page.tsx"));

/** The pages of the desk, each loaded when it is first opened. */
function Pages() {
  return (
    <Switch>
      <Route path="/" component={TodayPage} />
      <Route path="/enquiry" component={EnquiryPage} />
      <Route path="/enquiries" component={EnquiriesPage} />
      <Route path="/stock" component={StockPage} />
      <Route path="/terms" component={TermsPage} />
      <Route path="/terms/prices" component={PricesPage} />
      <Route path="/depot" component={DepotPage} />
      <Route path="/depot/figures" component={FiguresPage} />
      <Route path="/depot/times" component={TimesPage} />
      <Route path="/diary" component={DiaryPage} />
      <Route path="/hires" component={HiresPage} />
      <Route path="/hires/:id/:part?">
        {({ id, part }) => <HirePage key={id} id={id} part={part ?? "now"} />}
      </Route>
      <Route path="/help" component={HelpPage} />
      <Route path="/help/:id">{({ id }) => <HelpHirePage key={id} id={id} />}</Route>
      <Route path="/rules" component={RulesPage} />
      <Route path="/insurance" component={InsurancePage} />
      <Route path="/money" component={MoneyPage} />
      <Route path="/fleet" component={FleetPage} />
      <Route path="/fleet/due" component={DuePage} />
      <Route path="/fleet/new" component={NewVehiclePage} />
      <Route path="/fleet/:id/edit">{({ id }) => <EditVehiclePage key={id} id={id} />}</Route>
      <Route path="/fleet/:id/versions">{({ id }) => <VersionsPage key={id} id={id} />}</Route>
      <Route path="/fleet/:id">{({ id }) => <VehiclePage key={id} id={id} />}</Route>
      <Route path="/messages" component={MessagesPage} />
      <Route path="/messages/hire/:id">{({ id }) => <WritePage key={id} id={id} />}</Route>
      <Route path="/outcomes" component={OutcomesPage} />
      <Route path="/import" component={ImportPage} />
      <Route path="/accounts" component={AccountsPage} />
      <Route path="/own" component={OwnPage} />
      <Route path="/more" component={MorePage} />
      <Route>
        <Problem title={t("desk.noSuchPage")} />
      </Route>
    </Switch>
  );
}

function SignedIn({ children }: { readonly children: ReactNode }) {
  const session = useSession();
  if (session.isPending) return <Loading />;
  if (session.isError) return <FailureNote failure={session.error} onAgain={() => void session.refetch()} />;
  if (session.data === null) return <SignInPage />;
  return (
    <>
      <a href="#main" className="skip">
        {t("desk.skip")}
      </a>
      <TopBar session={session.data} />
      <main id="main" className="page">
        {children}
      </main>
    </>
  );
}

export function App() {
  const [place, go] = useLocation();
  return (
    <RouterProvider navigate={go}>
      <ErrorFence key={place.split("/").slice(0, 3).join("/")}>
        <Suspense fallback={<Loading />}>
          <Switch>
            <Route path="/setup/:token">{({ token }) => <SetUpPage token={token} />}</Route>
            <Route>
              <SignedIn>
                <Suspense fallback={<Loading />}>
                  <Pages />
                </Suspense>
              </SignedIn>
            </Route>
          </Switch>
        </Suspense>
      </ErrorFence>
    </RouterProvider>
  );
}
