import type { ComponentChildren } from "preact";
import { useEffect, useState } from "preact/hooks";

/**
 * True once the page was drawn so many times since. Parts below the first screen begin then: all of them in
 * one task would hold up the name of the field, and the first touch.
 */
export const useAfterFrames = (frames: number): boolean => {
  const [after, setAfter] = useState(false);
  useEffect(() => {
    let asked = 0;
    let waiting: ReturnType<typeof setTimeout> | undefined;
    const next = (left: number) => {
      asked = requestAnimationFrame(() => {
        if (left > 1) next(left - 1);
        else waiting = setTimeout(() => setAfter(true));
      });
    };
    next(frames);
    return () => {
      cancelAnimationFrame(asked);
      clearTimeout(waiting);
    };
  }, [frames]);
  return after;
};

/** Shows its children once the page was drawn so many times; 0 at once. */
export const AfterFrames = (props: {
  readonly frames: number;
  readonly children: ComponentChildren;
}): ComponentChildren => {
  const after = useAfterFrames(Math.max(1, props.frames));
  return props.frames === 0 || after ? props.children : null;
};
