import { useState } from "react";
import { type Session, signIn } from "../api/session.ts";

/** Who is there? */
export const SignIn = ({ onSession }: { onSession: (session: Session) => void }) => {
  const [fault, setFault] = useState<string>();
  return (
    <main className="sign-in">
      <h2>Sign in</h2>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          const form = new FormData(event.currentTarget);
          signIn(String(form.get("name")), String(form.get("password")))
            .then(onSession)
            .catch((error: Error) => setFault(error.message));
        }}
      >
        <label>
          Name
          <input name="name" autoComplete="username" required />
        </label>
        <label>
          Password
          <input name="password" type="password" autoComplete="current-password" required />
        </label>
        {fault && <p role="alert">{fault}</p>}
        <button type="submit" className="decide">
          Sign in
        </button>
      </form>
    </main>
  );
};
