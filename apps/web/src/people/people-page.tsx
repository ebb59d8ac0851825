import { useCallback, useEffect, useState } from "react";
import { addPerson, listPeople, type PersonEntry, type Role, type Session, setRole } from "../api/session.ts";

const roles: Readonly<Record<Role, string>> = {
  reader: "looks",
  editor: "looks and writes",
  owner: "also looks after people and backups",
};

/** Who may do what, and the copy of everything. */
export const PeoplePage = ({ session, onSession }: { session: Session; onSession: () => void }) => {
  const [people, setPeople] = useState<readonly PersonEntry[]>([]);
  const [fault, setFault] = useState<string>();
  const load = useCallback(() => {
    listPeople()
      .then(setPeople)
      .catch((error: Error) => setFault(error.message));
  }, []);
  useEffect(load, [load]);
  const first = session.accounts === "open";
  return (
    <main className="people-page">
      <h2>People</h2>
      {first && (
        <p>
          Nobody has an account, so whoever sits at this machine may do everything. The first account is an owner's;
          from then on everybody signs in.
        </p>
      )}
      {fault && <p role="alert">{fault}</p>}
      <ul className="people">
        {people.map(({ id, name, role }) => (
          <li key={id}>
            <b>{name}</b>{" "}
            <select
              aria-label={`what ${name} may do`}
              value={role}
              onChange={({ target }) =>
                setRole(id, target.value as Role)
                  .then(load)
                  .catch((error: Error) => setFault(error.message))
              }
            >
              {Object.entries(roles).map(([key, may]) => (
                <option key={key} value={key}>
                  {key}: {may}
                </option>
              ))}
            </select>
          </li>
        ))}
      </ul>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          const form = event.currentTarget;
          const given = new FormData(form);
          addPerson(String(given.get("name")), String(given.get("role")) as Role, String(given.get("password")))
            .then(() => {
              form.reset();
              setFault(undefined);
              if (first) onSession();
              else load();
            })
            .catch((error: Error) => setFault(error.message));
        }}
      >
        <h3>A new person</h3>
        <label>
          Name
          <input name="name" autoComplete="off" required />
        </label>
        <label>
          Password, at least 10 characters
          <input name="password" type="password" autoComplete="new-password" required />
        </label>
        <label>
          May do
          <select name="role" defaultValue={first ? "owner" : "editor"}>
            {Object.entries(roles)
              .filter(([key]) => !first || key === "owner")
              .map(([key, may]) => (
                <option key={key} value={key}>
                  {key}: {may}
                </option>
              ))}
          </select>
        </label>
        <button type="submit">Add</button>
      </form>
      <h3>A copy of everything</h3>
      <p>
        <a href="/api/backup" download>
          Back up all jobs into one file
        </a>
        . It is put back into an empty store with <code>npm run restore -- FILE</code>.
      </p>
    </main>
  );
};
