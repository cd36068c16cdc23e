import { type BaseObject, Layer } from '@univerjs/engine-render';

/** What the grid keeps to itself of putting a shape on a layer. */
interface Bound {
  _layerBehavior(this: Layer, shape: BaseObject): void;
}

/**
 * Has the grid's layers forget a shape that was taken off. By itself a layer keeps for good what tells it that a shape has
 * moved, and with every selection come a dozen new shapes.
 * @throws Error where the grid draws otherwise than the version that this was written for
 */
export function letShapesGo(): void {
  const layers = Layer.prototype as unknown as Bound;
  if (typeof layers._layerBehavior !== 'function') throw new Error('The grid draws otherwise than it did.');
  layers._layerBehavior = function (shape) {
    const told = this.disposeWithMe(shape.onTransformChange$.subscribeEvent(() => void this.makeDirty(true)));
    shape.disposeWithMe(told);
    shape.layer = this;
  };
}
