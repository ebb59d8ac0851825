/** What the store will not do, in words for the person who asked; everything else that is thrown is a bug or a broken disk. */
export class StoreRefusal extends Error {
  override readonly name = "StoreRefusal";
}
