import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { App } from "./app.tsx";
import { carryAlong } from "./field/carry-along.ts";
import { keepSending } from "./field/outbox.ts";
import "./look/sizes.css";
import "./look/paper.css";
import "./look/arrangement.css";
import "./look/plan.css";
import "./look/answers.css";
import "./look/form.css";
import "./look/job.css";
import "./look/papers.css";
import "./look/pictures.css";
import "./look/field.css";
import "./look/manual.css";

keepSending();
carryAlong();

createRoot(document.getElementById("root")!).render(
  <StrictMode>
    <App />
  </StrictMode>,
);
