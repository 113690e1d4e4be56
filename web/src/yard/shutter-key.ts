/**
 * Keys that release the shutter where a browser hands them on: the volume keys of a device or of a shutter button
 * held in the other hand, and a camera key. Enter and Space press the button that has the focus by themselves.
 * @source UI Events KeyboardEvent key Values, W3C, audio and camera keys
 */
const SHUTTER_KEYS: ReadonlySet<string> = new Set(["AudioVolumeUp", "AudioVolumeDown", "Camera"]);

export const isShutterKey = (key: string): boolean => SHUTTER_KEYS.has(key);
