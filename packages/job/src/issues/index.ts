export { type IssueCode, issueCatalogue } from "./catalogue.ts";
export { didYouMean } from "./did-you-mean.ts";
export { type Issue, printIssue } from "./issue.ts";
