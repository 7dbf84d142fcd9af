/** The map itself, drawn with the map library. It loads nothing from anywhere. */
import {
  circle,
  divIcon,
  type LatLngExpression,
  latLngBounds,
  layerGroup,
  map as makeMap,
  marker,
  polygon,
  polyline,
} from "leaflet";
import { type LatitudeLongitude, roughDistanceM, turnedDeg } from "../../../science/position/distance.ts";
import { type CornersDrawn, type Drawing, type HereDrawn, placesOf, type Thing } from "./drawing.ts";
import { nameLayer } from "./name-layer.ts";
import { cornerElement, signElement } from "./signs.ts";
import "leaflet/dist/leaflet.css";
import "./map.css";

/** What the map tells of. */
export interface GroundEvents {
  /** The ground was touched, not a sign on it. */
  readonly onTouch: (place: LatitudeLongitude) => void;
  readonly onPick: (id: string) => void;
  readonly onPickCorner: (at: number) => void;
  readonly onMoveCorner: (at: number, place: LatitudeLongitude) => void;
  /** How much ground one pixel stands for, after every change. */
  readonly onScale: (metresPerPx: number) => void;
}

/** An open map. */
export interface Ground {
  readonly draw: (drawing: Drawing) => void;
  /** Shows all of the ground. */
  readonly showAll: () => void;
  readonly closer: () => void;
  readonly farther: () => void;
  /** The place in the middle of the map. */
  readonly middle: () => LatitudeLongitude;
  readonly goTo: (place: LatitudeLongitude) => void;
  readonly close: () => void;
}

const CLOSEST = 23;
/** A single spot is shown with some ground around it. */
const CLOSEST_BY_ITSELF = 19;
/** More handles than this hold up a slow phone: they show once one has come close enough. */
const MOST_HANDLES = 80;

/**
 * Opens a map in an element.
 *
 * @param still the page scrolls under one finger and two fingers move the map; else one finger moves it
 */
export const openGround = (element: HTMLElement, still: boolean, events: GroundEvents): Ground => {
  const calm = matchMedia("(prefers-reduced-motion: reduce)").matches;
  const map = makeMap(element, {
    zoomControl: false,
    attributionControl: false,
    dragging: !still,
    scrollWheelZoom: !still,
    doubleClickZoom: false,
    fadeAnimation: false,
    zoomAnimation: !calm,
    markerZoomAnimation: !calm,
    inertia: !calm,
    zoomSnap: 0.5,
    maxZoom: CLOSEST,
  });
  // The field itself lies beneath everything else that is drawn on it.
  map.createPane("field").style.zIndex = "350";
  let drawing: Drawing | null = null;
  let fitted = false;
  let closed = false;
  /** A corner is under the finger: its handle must not be made anew beneath it. */
  let dragging = false;
  /** Longitudes are counted on from here, so that a field on the date line lies in one piece. */
  let longitudeDeg = 0;
  const toMap = (place: LatitudeLongitude): [number, number] => [
    place.latitudeDeg,
    longitudeDeg + turnedDeg(place.longitudeDeg - longitudeDeg),
  ];
  const fromMap = ({ lat, lng }: { readonly lat: number; readonly lng: number }): LatitudeLongitude => ({
    latitudeDeg: Math.min(90, Math.max(-90, lat)) + 0,
    longitudeDeg: turnedDeg(lng) + 0,
  });
  const ground = layerGroup().addTo(map);
  const names = nameLayer(map, toMap);
  const signs = layerGroup().addTo(map);
  const handles = layerGroup().addTo(map);
  const person = layerGroup().addTo(map);
  // The list beside the map holds the same for a screen reader; a hundred signs would only be in its way.
  map.getPane("mapPane")?.setAttribute("aria-hidden", "true");

  const icon = (html: HTMLElement, px: number) =>
    divIcon({ html, className: "on-ground", iconSize: [px, px] });
  const putSign = (thing: Thing): void => {
    const at = toMap(thing.at);
    if (thing.to !== null)
      polyline([at, toMap(thing.to)], { className: `way way-${thing.sign}`, interactive: false }).addTo(
        signs,
      );
    marker(at, { icon: icon(signElement(thing.sign, thing.label), 48), keyboard: false })
      .on("click", () => events.onPick(thing.id))
      .addTo(signs);
  };
  const putHandles = (corners: CornersDrawn): void => {
    handles.clearLayers();
    const seen = map.getBounds().pad(0.1);
    const near = corners.places.flatMap((place, at) => {
      const on = toMap(place);
      return seen.contains(on) || at === corners.chosen ? [{ on, at }] : [];
    });
    if (near.length > MOST_HANDLES) return;
    for (const { on, at } of near)
      marker(on, {
        icon: icon(cornerElement(at + 1, at === corners.chosen), 48),
        keyboard: false,
        draggable: corners.movable,
        zIndexOffset: at === corners.chosen ? 1000 : 0,
      })
        .on("click", () => events.onPickCorner(at))
        .on("dragstart", () => {
          dragging = true;
        })
        .on("dragend", ({ target }) => {
          dragging = false;
          events.onMoveCorner(at, fromMap(target.getLatLng()));
        })
        .addTo(handles);
  };
  const putCorners = (corners: CornersDrawn): void => {
    const places = corners.places.map(toMap);
    const look = { className: "edge-so-far", interactive: false };
    (places.length > 2 ? polygon(places, look) : polyline(places, look)).addTo(ground);
    for (const to of corners.crossing) {
      const [a, b] = [places.at(to - 1), places[to]];
      if (a !== undefined && b !== undefined)
        polyline([a, b], { className: "crossing", interactive: false }).addTo(ground);
    }
    putHandles(corners);
  };
  const putHere = (here: HereDrawn | null): void => {
    person.clearLayers();
    if (here === null) return;
    const at: LatLngExpression = toMap(here.at);
    const of = here.old ? "here-then" : "here-now";
    circle(at, { radius: here.accuracyM, className: of, interactive: false }).addTo(person);
    const dot = document.createElement("div");
    dot.className = `dot ${of}`;
    marker(at, { icon: icon(dot, 24), interactive: false, keyboard: false, zIndexOffset: 500 }).addTo(person);
  };
  const tellScale = (): void => {
    const { x, y } = map.getSize().divideBy(2);
    const a = fromMap(map.containerPointToLatLng([x - 50, y]));
    const b = fromMap(map.containerPointToLatLng([x + 50, y]));
    events.onScale(roughDistanceM(a, b) / 100);
  };
  const showAll = (): void => {
    const places = drawing === null ? [] : placesOf(drawing);
    if (places.length === 0) return;
    map.fitBounds(latLngBounds(places.map(toMap)), {
      animate: false,
      padding: [60, 48],
      maxZoom: CLOSEST_BY_ITSELF,
    });
    fitted = true;
  };
  const putGround = (next: Drawing): void => {
    ground.clearLayers();
    signs.clearLayers();
    handles.clearLayers();
    if (next.boundary !== null)
      polygon(next.boundary.map(toMap), {
        className: "field-edge",
        interactive: false,
        pane: "field",
      }).addTo(ground);
    names.draw(next);
    for (const thing of next.things) putSign(thing);
    if (next.corners !== null) putCorners(next.corners);
  };
  // Whoever walks has no hand free for the map: it keeps the whole edge in sight.
  const keepInSight = (corners: CornersDrawn | null): void => {
    const last = corners === null || corners.movable ? undefined : corners.places.at(-1);
    if (last !== undefined && !map.getBounds().contains(toMap(last))) showAll();
  };
  map.on("moveend", () => {
    // Closing stops a movement, and its end is told when there is no map left.
    if (closed) return;
    tellScale();
    names.place();
    if (drawing !== null && drawing.corners !== null && !dragging) putHandles(drawing.corners);
  });
  map.on("click", ({ latlng }) => events.onTouch(fromMap(latlng)));
  const sized = new ResizeObserver(() => {
    map.invalidateSize({ animate: false });
    names.place();
    if (still && fitted) showAll();
  });
  sized.observe(element);
  return {
    draw: (next) => {
      const before = drawing;
      drawing = next;
      if (!fitted) {
        const [first] = placesOf(next);
        if (first === undefined) return;
        longitudeDeg = first.longitudeDeg;
        showAll();
      }
      // Where the person stands changes every second; the rest is not drawn anew for it.
      if (before?.here !== next.here || before === null) putHere(next.here);
      if (before !== null && sameGround(before, next) && ground.getLayers().length > 0) return;
      putGround(next);
      keepInSight(next.corners);
    },
    showAll,
    closer: () => map.zoomIn(1),
    farther: () => map.zoomOut(1),
    middle: () => fromMap(map.getCenter()),
    goTo: (place) => map.panTo(toMap(place), { animate: false }),
    close: () => {
      closed = true;
      sized.disconnect();
      // Leaflet 1.9.4 ends a zoom by a timer that outlives the map, and looks for its panes then.
      Object.assign(map, { _animatingZoom: false });
      map.remove();
    },
  };
};

const sameGround = (a: Drawing, b: Drawing): boolean =>
  a.boundary === b.boundary && a.things === b.things && a.labels === b.labels && a.corners === b.corners;
