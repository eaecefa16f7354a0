/** Version of this program, as snapshots name it; a test holds that it is that of package.json. */
export const ENGINE = '0.1.0';
