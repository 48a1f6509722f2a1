import { encode } from 'uqr';

/** A QR code as one outline: dark squares on light ground. */
export interface QrCode {
  /** Side of the square in modules, with the quiet border of four modules that ISO/IEC 18004 asks for. */
  readonly size: number;
  /** SVG path data in a view box of `0 0 size size`. */
  readonly path: string;
  /** Side in millimetres at which a module is still 0.4 mm wide; print it no smaller. */
  readonly leastMillimetres: number;
}

const quietBorder = 4;
const moduleMillimetres = 0.4;

/**
 * The QR code of a text, with the highest error correction that costs no further size. Neighbouring dark
 * modules of a row are one rectangle, which keeps the path short. Throws a RangeError when the text is too
 * long for any code (2953 bytes).
 */
export function qrCode(text: string): QrCode {
  let data: readonly (readonly boolean[])[];
  let size: number;
  try {
    ({ data, size } = encode(text, { ecc: 'L', boostEcc: true, border: quietBorder }));
  } catch {
    throw new RangeError('This link is too long for a QR code.');
  }
  const rows = data.flatMap((row, y) => {
    const runs: string[] = [];
    for (let x = 0; x < row.length; x += 1) {
      if (row[x] !== true) continue;
      const start = x;
      while (row[x + 1] === true) x += 1;
      runs.push(`M${String(start)} ${String(y)}h${String(x + 1 - start)}v1H${String(start)}z`);
    }
    return runs;
  });
  return { size, path: rows.join(''), leastMillimetres: Math.ceil(size * moduleMillimetres) };
}
