import { encode } from "uqr";

/** Light squares round the dark ones. Source: ISO/IEC 18004, the quiet zone of four modules. */
const QUIET = 4;

/**
 * The one of the eight masks that is used, a chessboard; readers take any. To draw all eight and weigh which looks best costs
 * more than it gives. Source: ISO/IEC 18004, data masking.
 */
const MASK = 0;

/** An address as a code to point a camera at, dark on light in any light; read out as `says`. */
export function Qr({ address, says }: { readonly address: string; readonly says: string }) {
  const { path, size } = codeOf(address);
  return (
    <svg class="qr" role="img" aria-label={says} viewBox={`0 0 ${size} ${size}`}>
      <rect width={size} height={size} fill="#fff" />
      <path d={path} fill="#000" />
    </svg>
  );
}

/** The same as a picture of its own, for a page that is opened more often than a camera looks at it. */
export function qrPicture(address: string): string {
  const { path, size } = codeOf(address);
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${size} ${size}"><path d="M0 0h${size}v${size}h-${size}z" fill="#fff"/><path d="${path}" fill="#000"/></svg>`;
}

/** The dark squares of an address as a path, and how wide the whole is. */
function codeOf(address: string): { readonly path: string; readonly size: number } {
  const { data, size } = encode(address, { ecc: "M", border: QUIET, maskPattern: MASK });
  return { path: data.flatMap(runsIn).join(""), size };
}

/** The dark runs of one row as pieces of a path, left to right. */
function runsIn(row: readonly boolean[], y: number): readonly string[] {
  const runs: string[] = [];
  for (let x = 0; x < row.length; x++) {
    if (!row[x]) continue;
    const from = x;
    while (row[x + 1]) x++;
    const width = x - from + 1;
    runs.push(`M${from} ${y}h${width}v1h-${width}z`);
  }
  return runs;
}
