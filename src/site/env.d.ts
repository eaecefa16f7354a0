/// <reference types="astro/client" />
/** Types of the virtual modules; see virtual-modules.ts. */

declare module 'virtual:shop' {
  const shop: import('../resolve/types.ts').ResolvedShop | null;
  export default shop;
}

declare module 'virtual:control' {
  /** null for a shop compiled without control. */
  const control: import('../control/types.ts').ControlView | null;
  export default control;
}

declare module 'virtual:build-report' {
  const report: import('../pipeline/index.ts').BuildReport;
  export default report;
}

declare module 'virtual:checks' {
  const checks: readonly import('../pipeline/index.ts').CheckWords[];
  export default checks;
}

declare module 'virtual:site-fonts' {
  /** Face name to the WOFF2 file in base64. */
  const fonts: Readonly<Record<string, string>>;
  export default fonts;
}

declare module 'virtual:site-diagnostics' {
  const diagnostics: { readonly text: string; readonly errors: number };
  export default diagnostics;
}

declare module 'subset-font' {
  /** Keeps the glyphs that `text` needs. */
  export default function subsetFont(
    font: Uint8Array,
    text: string,
    options?: { readonly targetFormat?: 'sfnt' | 'woff' | 'woff2'; readonly noHinting?: boolean },
  ): Promise<Uint8Array>;
}

/** Path of the site on its host; put in by config.ts. */
declare const __SITE_BASE__: string;
