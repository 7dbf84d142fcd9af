import { useEffect, useState } from "preact/hooks";

/** What is this near the screen begins: a chart or a picture that nobody scrolls to costs nothing. */
const NEAR_PX = "150px";

/** Whether an element has come near the screen. */
export const useNear = (place: { readonly current: Element | null }): boolean => {
  const [near, setNear] = useState(false);
  useEffect(() => {
    if (place.current === null) return undefined;
    const watch = new IntersectionObserver(
      (entries) => {
        if (!entries.some(({ isIntersecting }) => isIntersecting)) return;
        setNear(true);
        watch.disconnect();
      },
      { rootMargin: NEAR_PX },
    );
    watch.observe(place.current);
    return () => watch.disconnect();
  }, []);
  return near;
};
