/** Longest side of a photograph that is sent, and of its small picture, px. */
const LONGEST = 1600;
const SMALL = 160;

const drawn = (picture: ImageBitmap, longest: number): HTMLCanvasElement => {
  const { width, height } = sizeWithin(picture, longest);
  const canvas = document.createElement("canvas");
  canvas.width = width;
  canvas.height = height;
  canvas.getContext("2d")!.drawImage(picture, 0, 0, width, height);
  return canvas;
};

/** The size with the same proportions whose longer side is at most `longest`; never larger than it was. */
export const sizeWithin = (
  { width, height }: { readonly width: number; readonly height: number },
  longest: number,
): { readonly width: number; readonly height: number } => {
  const scale = Math.min(1, longest / Math.max(width, height));
  return { width: Math.max(1, Math.round(width * scale)), height: Math.max(1, Math.round(height * scale)) };
};

export interface Shrunk {
  readonly file: Blob;
  readonly thumb: string;
}

/** A photograph as a JPEG small enough to send from a garage; place, time and camera are not in it any more. */
export const shrink = async (file: Blob): Promise<Shrunk | undefined> => {
  const picture = await createImageBitmap(file, { imageOrientation: "from-image" }).catch(() => undefined);
  if (!picture) return undefined;
  const large = await new Promise<Blob | null>((done) => drawn(picture, LONGEST).toBlob(done, "image/jpeg", 0.82));
  const thumb = drawn(picture, SMALL).toDataURL("image/jpeg", 0.7);
  picture.close();
  return large ? { file: large, thumb } : undefined;
};
