import PDFDocument from 'pdfkit';
import { describe, expect, it } from 'vitest';
import { packagedFonts } from '../../../src/cli/fonts';
import { widthOf } from '../../../src/drawing/paper/letter-width';

describe('the width of lettering', () => {
  it('is that of the font or a little more, so that words find room', () => {
    const { regular, semibold } = packagedFonts();
    const document = new PDFDocument({ autoFirstPage: false });
    document.registerFont('regular', regular).registerFont('semibold', semibold);
    for (const words of [
      'skive the front of the upper face from 5.9 to 1.0 mm over 16.5 mm',
      'Betony EU 38 L',
      'Market stall 3, Lock Lane shop 2',
      'coat lower face of lifts 8 to 2, upper face of lifts 7 to 1 twice, the first thin',
      'Print at 100 %, measure before cutting: the square must be 100 mm both ways.',
      'WELT MMM Wide Ωραία Ёлка',
    ]) {
      for (const bold of [false, true]) {
        const true_ = document
          .font(bold ? 'semibold' : 'regular')
          .fontSize(10)
          .widthOfString(words);
        const taken = widthOf(words, 10, bold);
        expect(taken, words).toBeGreaterThan(0.98 * true_);
        expect(taken, words).toBeLessThan(1.25 * true_);
      }
    }
  });
});
