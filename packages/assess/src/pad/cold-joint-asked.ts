import type { Job } from "@floorworthy/job";

/** Distance the maker asks between an anchor and the joint round a pad; his edge distance where he says nothing of joints. mm */
export const coldJointAsked = ({ lift: { asks, anchors } }: Job): number =>
  Math.max(
    asks.joint.known ? asks.joint.high : asks.edge.known ? asks.edge.high : 0,
    anchors.product.minimumEdge.known ? anchors.product.minimumEdge.high : 0,
  );
