import { useWork } from "../work/use-work.ts";

/** What the readings so far make of the job. */
export const Standing = ({ live }: { live: string | undefined }) => {
  const { state, value } = useWork("cardStanding", live === undefined ? undefined : [live], { pause: 600 });
  if (!value) return null;
  return (
    <p className="card-standing" data-state={state}>
      The job so far: {value}
    </p>
  );
};
