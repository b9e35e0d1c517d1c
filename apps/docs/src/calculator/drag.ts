import { type LengthUnit, printTyped } from './lengths.ts';

interface Drag {
  readonly pointer: number;
  readonly group: SVGGraphicsElement;
  readonly from: DOMPoint;
  /** Names of the fields that follow, with what they say at the beginning. */
  readonly x: readonly [string, number] | undefined;
  readonly y: readonly [string, number] | undefined;
}

const placeIn = (group: SVGGraphicsElement, { clientX, clientY }: PointerEvent) =>
  new DOMPoint(clientX, clientY).matrixTransform(group.getScreenCTM()?.inverse());

interface DragTerms {
  unit(): LengthUnit;
  /** The length that a field says, in millimetres. */
  lengthOf(name: string): number | undefined;
  /** Takes new texts of fields. */
  set(texts: Readonly<Record<string, string>>): void;
}

/** Lets the shapes of a drawing be dragged that say which fields they move. */
export function makeDraggable(figure: HTMLElement, { unit, lengthOf, set }: DragTerms) {
  let drag: Drag | undefined;
  figure.addEventListener('pointerdown', (event) => {
    const shape = (event.target as Element).closest<SVGGraphicsElement>('[data-drag-x], [data-drag-y]');
    const group = shape?.parentElement as SVGGraphicsElement | null | undefined;
    if (!shape || !group || event.button !== 0) return;
    const begin = (name: string | undefined) => {
      const length = name === undefined ? undefined : lengthOf(name);
      return name === undefined || length === undefined ? undefined : ([name, length] as const);
    };
    const [x, y] = [begin(shape.dataset.dragX), begin(shape.dataset.dragY)];
    drag = { pointer: event.pointerId, group, from: placeIn(group, event), x, y };
    figure.setPointerCapture(event.pointerId);
    event.preventDefault();
  });
  figure.addEventListener('pointermove', (event) => {
    if (event.pointerId !== drag?.pointer) return;
    const { group, from, x, y } = drag;
    const to = placeIn(group, event);
    const moved = [
      ...(x ? [[x[0], printTyped(x[1] + to.x - from.x, unit())]] : []),
      ...(y ? [[y[0], printTyped(y[1] + to.y - from.y, unit())]] : []),
    ];
    set(Object.fromEntries(moved));
  });
  const stop = ({ pointerId }: PointerEvent) => {
    if (pointerId === drag?.pointer) drag = undefined;
  };
  figure.addEventListener('pointerup', stop);
  figure.addEventListener('pointercancel', stop);
}
