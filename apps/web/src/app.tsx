import { lazy, Suspense, useCallback, useEffect, useState } from "react";
import { Unreached } from "./api/ask.ts";
import { readSession, type Session, signOut } from "./api/session.ts";
import { WaitingLine } from "./field/waiting-line.tsx";
import { JobsPage } from "./jobs/jobs-page.tsx";
import { SignIn } from "./people/sign-in.tsx";
import { UnitsSwitch } from "./quantities/units-switch.tsx";
import { useRoute } from "./route.ts";
import type { Units } from "./work/messages.ts";

const JobPage = lazy(() => import("./job/job-page.tsx").then(({ JobPage }) => ({ default: JobPage })));
const LiftsPage = lazy(() => import("./lifts/lifts-page.tsx").then(({ LiftsPage }) => ({ default: LiftsPage })));
const LiftPage = lazy(() => import("./lifts/lift-page.tsx").then(({ LiftPage }) => ({ default: LiftPage })));
const CardPage = lazy(() => import("./field/card-page.tsx").then(({ CardPage }) => ({ default: CardPage })));
const ManualPage = lazy(() => import("./manuals/manual-page.tsx").then(({ ManualPage }) => ({ default: ManualPage })));
const PeoplePage = lazy(() => import("./people/people-page.tsx").then(({ PeoplePage }) => ({ default: PeoplePage })));

/** Without a connection one goes on with what this device keeps. */
const offline: Session = { accounts: "open", person: { name: "this device", role: "editor" } };

/** The whole page: a title bar, and where the person is. */
export const App = () => {
  const route = useRoute();
  const [session, setSession] = useState<Session>();
  const [units, setUnits] = useState<Units>();
  const [shown, setShown] = useState<Units>("inch-pound");
  const look = useCallback(() => {
    readSession()
      .then(setSession)
      .catch((error) => setSession(error instanceof Unreached ? offline : { accounts: "accounts" }));
  }, []);
  useEffect(look, [look]);
  const here = (page: string) =>
    route.page === page || `${route.page}s` === page || (route.page === "manual" && page === "lifts")
      ? "page"
      : undefined;
  if (!session) return <p role="status">One moment …</p>;
  return (
    <div className="sheet" data-page={route.page}>
      <header className="title" hidden={route.page === "card" && session.person !== undefined}>
        <h1>
          <a href="#/">Floorworthy</a> <span>will this floor carry the lift?</span>
        </h1>
        <nav aria-label="Main">
          <a href="#/" aria-current={here("jobs")}>
            Jobs
          </a>
          <a href="#/lifts" aria-current={here("lifts")}>
            Lifts
          </a>
          {session.person?.role === "owner" && (
            <a href="#/people" aria-current={here("people")}>
              People
            </a>
          )}
          {session.accounts === "accounts" && session.person && (
            <button type="button" onClick={() => signOut().then(look, look)}>
              {session.person.name}: sign out
            </button>
          )}
        </nav>
        {route.page === "job" && <UnitsSwitch units={units ?? shown} onChoose={setUnits} />}
      </header>
      {route.page !== "card" && <WaitingLine show="when-something-waits" />}
      {!session.person ? (
        <SignIn onSession={setSession} />
      ) : (
        <Suspense fallback={<p role="status">One moment …</p>}>
          {route.page === "jobs" && <JobsPage session={session} />}
          {route.page === "lifts" && <LiftsPage session={session} />}
          {route.page === "lift" && <LiftPage key={route.id} id={route.id} session={session} />}
          {route.page === "manual" && <ManualPage key={route.hash} id={route.id} hash={route.hash} session={session} />}
          {route.page === "people" && <PeoplePage session={session} onSession={look} />}
          {route.page === "job" && (
            <JobPage
              key={route.id}
              id={route.id}
              part={route.part}
              session={session}
              units={units}
              onUnits={setShown}
            />
          )}
          {route.page === "card" && (
            <CardPage key={route.id} id={route.id} card={route.card} step={route.step} session={session} />
          )}
        </Suspense>
      )}
    </div>
  );
};
