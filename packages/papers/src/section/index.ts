export { padSection } from "./pad-section.ts";
export { sectionGround } from "./section-ground.ts";
