import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { userEvent } from "vitest/browser";
import { type InstallOffer, isInstalled, isIosTab, watchInstallOffer } from "../../src/device/install.ts";
import { type KeyMeaning, listenForKeys, teachKey } from "../../src/device/keys.ts";
import { keepScreenOn } from "../../src/device/screen-on.ts";
import { howToDeliver, saveFile } from "../../src/device/share.ts";
import { switchSoundOn } from "../../src/device/sound.ts";
import { askToKeep, isKept, storageRoom } from "../../src/device/storage-room.ts";

let stop = new AbortController();
beforeEach(() => {
  stop = new AbortController();
});
afterEach(() => {
  stop.abort();
  document.body.replaceChildren();
  vi.restoreAllMocks();
});

describe("keys", () => {
  const meanings: KeyMeaning<"residue" | "bare">[] = [
    { key: "r", code: "KeyR", answer: "residue" },
    { key: " ", code: "Space", answer: "bare" },
  ];
  const listen = (): string[] => {
    const answers: string[] = [];
    listenForKeys(
      () => meanings,
      (answer) => answers.push(answer),
      stop.signal,
    );
    return answers;
  };

  it("answer, with capitals, without shortcuts, until the end", async () => {
    const answers = listen();
    await userEvent.keyboard("r");
    await userEvent.keyboard("{Shift>}R{/Shift}");
    await userEvent.keyboard("{Control>}r{/Control}");
    await userEvent.keyboard("x");
    expect(answers).toEqual(["residue", "residue"]);
    stop.abort();
    await userEvent.keyboard("r");
    expect(answers).toHaveLength(2);
  });

  it("held down answer once", async () => {
    const answers = listen();
    const down = (repeat: boolean) => {
      const event = new KeyboardEvent("keydown", {
        key: "r",
        code: "KeyR",
        repeat,
        cancelable: true,
        bubbles: true,
      });
      document.body.dispatchEvent(event);
      return event.defaultPrevented;
    };
    expect([down(false), down(true), down(true)]).toEqual([true, true, true]);
    expect(answers).toEqual(["residue"]);
  });

  it("belong to a text that is being written", async () => {
    const answers = listen();
    const input = document.createElement("input");
    const editable = document.createElement("div");
    editable.contentEditable = "true";
    document.body.append(input, editable);
    await userEvent.type(input, "rr");
    editable.focus();
    await userEvent.keyboard("r");
    expect(answers).toEqual([]);
    expect(input.value).toBe("rr");
  });

  it("do not press the button that was touched last as well", async () => {
    const answers = listen();
    const button = document.createElement("button");
    const pressed = vi.fn();
    button.addEventListener("click", pressed);
    document.body.append(button);
    button.focus();
    await userEvent.keyboard(" ");
    expect(answers).toEqual(["bare"]);
    expect(pressed).not.toHaveBeenCalled();
  });

  it("are taught by the next press, which answers nothing", async () => {
    const answers = listen();
    const taught = teachKey(stop.signal);
    await userEvent.keyboard("{Shift}{r}");
    expect(await taught).toEqual({ ok: true, value: { key: "r", code: "KeyR" } });
    expect(answers).toEqual([]);
    await userEvent.keyboard("r");
    expect(answers).toEqual(["residue"]);
  });

  it("are not taught when the waiting ends", async () => {
    const taught = teachKey(stop.signal);
    stop.abort();
    expect(await taught).toMatchObject({ ok: false, problem: { code: "device/key-not-taught" } });
  });
});

describe("screen kept on", () => {
  class Lock extends EventTarget {
    released = false;
    readonly type = "screen";
    onrelease = null;
    async release() {
      this.released = true;
      this.dispatchEvent(new Event("release"));
    }
  }
  const refusal = () => Promise.reject(new DOMException("", "NotAllowedError"));

  it("says a state and gives the permission back at the end", async () => {
    const lock = new Lock();
    vi.spyOn(navigator.wakeLock, "request").mockResolvedValue(lock);
    const states: string[] = [];
    keepScreenOn((state) => states.push(state), stop.signal);
    await vi.waitFor(() => expect(states).toEqual(["on"]));
    stop.abort();
    expect(lock.released).toBe(true);
    expect(states).toEqual(["on"]);
  });

  it("asks again at a touch after a refusal, and when the page returns", async () => {
    const first = new Lock();
    const request = vi
      .spyOn(navigator.wakeLock, "request")
      .mockImplementationOnce(refusal)
      .mockResolvedValueOnce(first)
      .mockResolvedValueOnce(new Lock());
    const states: string[] = [];
    keepScreenOn((state) => states.push(state), stop.signal);
    await vi.waitFor(() => expect(states).toEqual(["refused"]));
    document.body.dispatchEvent(new PointerEvent("pointerup", { bubbles: true }));
    await vi.waitFor(() => expect(states).toEqual(["refused", "on"]));
    // Hidden: the browser takes the permission back, which is no refusal.
    const hidden = vi.spyOn(document, "visibilityState", "get").mockReturnValue("hidden");
    await first.release();
    hidden.mockReturnValue("visible");
    document.dispatchEvent(new Event("visibilitychange"));
    await vi.waitFor(() => expect(request).toHaveBeenCalledTimes(3));
    expect(states).toEqual(["refused", "on"]);
  });

  it("ended while the phone was still thinking, leaves no screen lit", async () => {
    const lock = new Lock();
    let answer: (lock: WakeLockSentinel) => void = () => undefined;
    vi.spyOn(navigator.wakeLock, "request").mockReturnValue(
      new Promise((resolve) => {
        answer = resolve;
      }),
    );
    const states: string[] = [];
    keepScreenOn((state) => states.push(state), stop.signal);
    stop.abort();
    answer(lock);
    await vi.waitFor(() => expect(lock.released).toBe(true));
    expect(states).toEqual([]);
  });

  it("comes to an answer with the real browser", async () => {
    const states: string[] = [];
    keepScreenOn((state) => states.push(state), stop.signal);
    await vi.waitFor(() => expect(states.length).toBeGreaterThan(0), { timeout: 10_000 });
    expect(["on", "refused"]).toContain(states[0]);
  });
});

describe("files", () => {
  it("that Chromium does not share are saved", () => {
    expect(howToDeliver(new File(["x"], "farm.zip", { type: "application/zip" }))).toBe("save");
    expect(howToDeliver(new File(["{}"], "farm.geojson", { type: "application/geo+json" }))).toBe("save");
  });

  it("are handed to the browser under their name, and the page is as before", () => {
    const clicked: string[] = [];
    document.addEventListener(
      "click",
      (event) => {
        event.preventDefault();
        if (event.target instanceof HTMLAnchorElement)
          clicked.push(event.target.download, event.target.protocol);
      },
      { signal: stop.signal },
    );
    expect(saveFile(new File(["x"], "farm.zip"))).toEqual({ ok: true, value: "handed-over" });
    expect(clicked).toEqual(["farm.zip", "blob:"]);
    expect(document.querySelector("a")).toBeNull();
  });
});

describe("other abilities", () => {
  it("storage tells its room and whether it is kept", async () => {
    const room = await storageRoom();
    expect(room.ok && room.value.quotaBytes > room.value.usedBytes).toBe(true);
    expect(["kept", "not-kept"]).toContain(await isKept());
    expect(["kept", "not-kept"]).toContain(await askToKeep());
  });

  it("a tab on a desk is neither installed nor on an iPhone", () => {
    expect([isInstalled(), isIosTab()]).toEqual([false, false]);
  });

  it("the offer to install is kept, taken up once, and then gone", async () => {
    const offers: (InstallOffer | null)[] = [];
    watchInstallOffer((offer) => offers.push(offer), stop.signal);
    const event = new Event("beforeinstallprompt", { cancelable: true });
    window.dispatchEvent(Object.assign(event, { prompt: async () => ({ outcome: "accepted" }) }));
    expect(event.defaultPrevented).toBe(true);
    expect(await offers[0]?.ask()).toBe("accepted");
    expect(offers[1]).toBeNull();
  });

  it("sound wakes at a key and plays, and never throws after its end", async () => {
    const loudspeaker = switchSoundOn(stop.signal);
    await userEvent.keyboard("x");
    const started = vi.spyOn(OscillatorNode.prototype, "start");
    await vi.waitFor(
      () => {
        loudspeaker.play("green");
        expect(started).toHaveBeenCalled();
      },
      { timeout: 10_000 },
    );
    stop.abort();
    expect(() => loudspeaker.play("bare")).not.toThrow();
  });
});
