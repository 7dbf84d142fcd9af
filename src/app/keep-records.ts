import { askToKeep } from "../device/storage-room.ts";
import type { House } from "../screens/parts/house.ts";
import { layBallast } from "../store/ballast.ts";

/**
 * Once the first record is saved, asks the browser to keep the records, and lays the ballast. Not at the
 * start: a question without a reason is refused, and some browsers then never ask again.
 */
export const keepRecords = (house: House): void => {
  const stop = house.records.subscribe(() => {
    stop();
    void askToKeep();
    // After the touch that wrote it has been answered.
    setTimeout(() => void layBallast(house.records.connection), 2000);
  });
};
