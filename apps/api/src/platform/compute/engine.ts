/** Version of the calculation, kept with every result. Raise it when any figure can change. */
export const ENGINE_VERSION = '0.1.0';
