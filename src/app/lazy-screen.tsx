import type { ComponentType } from "preact";
import { useEffect, useState } from "preact/hooks";

/**
 * A screen whose code is loaded when it is first shown. All code is on the device already, so this takes
 * a moment even without signal. When the code is gone (another window took a newer build) the frame stays
 * empty and the bar above offers to load the window again.
 */
export const lazyScreen = <P extends object>(load: () => Promise<ComponentType<P>>): ComponentType<P> => {
  let loaded: ComponentType<P> | undefined;
  return (props: P) => {
    const [Screen, setScreen] = useState<{ readonly is: ComponentType<P> } | undefined>(
      loaded === undefined ? undefined : { is: loaded },
    );
    useEffect(() => {
      if (loaded !== undefined) return;
      load().then(
        (component) => {
          loaded = component;
          setScreen({ is: component });
        },
        () => undefined,
      );
    }, []);
    return Screen === undefined ? <div class="frame" aria-busy="true" /> : <Screen.is {...props} />;
  };
};
