/** The layers of ARCHITECTURE.md, kept by name. tests/layers plants one offence to prove that this file is awake. */
const only = (name, from, allowed, comment) => ({
  name,
  comment,
  severity: "error",
  from: { path: from },
  to: { path: "^(packages|apps)/", pathNot: allowed },
});

module.exports = {
  forbidden: [
    {
      name: "no-circular",
      comment: "A circle hides which file comes first.",
      severity: "error",
      from: {},
      to: { circular: true },
    },
    {
      name: "not-to-unresolvable",
      comment: "An import that cannot be resolved puts this checker to sleep.",
      severity: "error",
      from: {},
      to: { couldNotResolve: true },
    },
    only(
      "engine-knows-no-job",
      "^packages/engine/",
      ["^packages/engine/"],
      "The engine is mathematics and mechanics; it knows no job, file or screen.",
    ),
    only("job-sees-engine", "^packages/job/", ["^packages/(job|engine)/"], "A job is read before it is judged."),
    only(
      "assess-sees-job",
      "^packages/assess/",
      ["^packages/(assess|job|engine)/"],
      "Rulings are values; they know no paper and no screen.",
    ),
    only(
      "papers-see-assess",
      "^packages/papers/",
      ["^packages/(papers|assess|job|engine)/"],
      "A sheet prints rulings; it never computes one for an app.",
    ),
    only(
      "manuals-see-job",
      "^packages/manuals/",
      ["^packages/(manuals|job|engine)/"],
      "A manual becomes a lift sheet, not a ruling.",
    ),
    only(
      "store-sees-job",
      "^packages/store/",
      ["^packages/(store|job|engine)/"],
      "The store keeps jobs; it judges nothing.",
    ),
    only("cli-alone", "^apps/cli/", ["^(packages/|apps/cli/)"], "Apps never see each other."),
    only("server-alone", "^apps/server/", ["^(packages/|apps/server/)"], "Apps never see each other."),
    only(
      "web-alone",
      "^apps/web/",
      ["^(packages/|apps/web/)"],
      "Apps never see each other; web talks to server over its published API.",
    ),
    {
      name: "quantities-at-the-bottom",
      comment: "Reading and printing numbers needs nothing else.",
      severity: "error",
      from: { path: "^packages/engine/src/quantities/" },
      to: { path: "^packages/", pathNot: "^packages/engine/src/quantities/" },
    },
    {
      name: "numerics-at-the-bottom",
      comment: "Mathematics needs nothing of ours.",
      severity: "error",
      from: { path: "^packages/engine/src/numerics/" },
      to: { path: "^packages/", pathNot: "^packages/engine/src/numerics/" },
    },
    {
      name: "codes-see-quantities",
      comment: "A clause is laid beside its page: it sees its own edition and quantities only.",
      severity: "error",
      from: { path: "^packages/engine/src/codes/([^/]+)/" },
      to: { path: "^packages/", pathNot: "^packages/engine/src/(codes/$1|quantities)/" },
    },
    {
      name: "no-io-in-the-middle",
      comment: "Same input, same bits: no files, clocks or network in engine, job and assess.",
      severity: "error",
      from: { path: "^packages/(engine|job|assess)/" },
      to: { dependencyTypes: ["core"] },
    },
  ],
  options: {
    doNotFollow: { path: "node_modules" },
    exclude: { path: "(^|/)(dist|node_modules)/" },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: "tsconfig.base.json" },
    enhancedResolveOptions: {
      exportsFields: ["exports"],
      conditionNames: ["import", "require", "node", "default", "types"],
      extensions: [".ts", ".tsx", ".js", ".mjs", ".json"],
    },
  },
};
