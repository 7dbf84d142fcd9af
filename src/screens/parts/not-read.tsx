/**
 * Stands where a part is not read yet. What stands below it, and below what it stands in, is shown together with the
 * part, after a second at the latest: else the part would push it away under a finger.
 */
export const NotRead = () => <div data-read="not-yet" />;
