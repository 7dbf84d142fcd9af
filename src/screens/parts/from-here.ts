import type { House } from "./house.ts";

/**
 * A way on from here, for after something was written down: whoever went elsewhere meanwhile is not thrown off
 * that screen. Taken when the key is touched, before anything is awaited.
 *
 * @param go `house.go` or `house.goInstead`
 */
export const fromHere = (go: House["go"]): House["go"] => {
  const { hash } = location;
  return (to) => {
    if (location.hash === hash) go(to);
  };
};
