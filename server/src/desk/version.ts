/** Version of engine and server, as frozen results name it; both are released together. */
export const ENGINE_VERSION = "0.2.0";
