/** The version of this app, as archives name it. A test compares it with package.json. */
export const APP_VERSION = "0.1.0";
