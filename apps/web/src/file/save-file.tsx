/** Hands the job file, as it stands, to the person's own disk. */
export const SaveFile = ({ name, text }: { name: string; text: string }) => (
  <button
    type="button"
    onClick={() => {
      const address = URL.createObjectURL(new Blob([text], { type: "text/yaml" }));
      const link = document.createElement("a");
      link.href = address;
      link.download = `${name}.yaml`;
      link.click();
      URL.revokeObjectURL(address);
    }}
  >
    Save the job file
  </button>
);
