/**
 * The one style of all sheets: black on white, nothing shown by colour alone, sizes in points so that paper is as
 * intended. It names no size of paper, so A4 and Letter both fit; on a screen the same page flows into its width.
 * Source: house rule; body type of 12 pt, read at arm's length in a shed's light, small type never under 10 but for the
 * page number.
 */
export const SHEET_STYLE = `
@page { margin: 11mm 13mm 14mm; @bottom-right { content: counter(page) ' of ' counter(pages); font: 9pt Georgia, serif; } }
* { box-sizing: border-box; }
html { background: #fff; color: #000; -webkit-text-size-adjust: 100%; }
body {
  margin: 0; font: 12pt/1.25 Charter, 'Bitstream Charter', 'Charis SIL', Georgia, 'Liberation Serif', serif;
  overflow-wrap: anywhere; font-variant-numeric: lining-nums;
}
h1, h2, h3, p, ul, ol, dl, dd { margin: 0; padding: 0; font-size: inherit; }
ul, ol { list-style: none; }
header { border-bottom: 2.5pt solid #000; padding-bottom: 2mm; }
h1 { font-size: 26pt; line-height: 1.1; font-weight: 600; letter-spacing: -0.01em; }
.of { font-size: 14pt; font-style: italic; } .of .whom { font-style: normal; font-size: 11pt; }
.facts { font-size: 11pt; margin-top: 1mm; }
.who.key { margin: 0 1mm 0 4mm; }
h2 { font-size: 15pt; line-height: 1.2; font-weight: 600; break-after: avoid; padding-bottom: 0.5mm; border-bottom: 1.2pt solid #000; }
section { margin-top: 3.2mm; }
.none { font-style: italic; padding: 2mm 0; }
.job { display: grid; grid-template-columns: 17mm 8mm minmax(0, 1fr) 40mm; padding: 1mm 0 0.8mm; border-bottom: 0.4pt solid #777; break-inside: avoid; }
.day { font-weight: 600; } .again { font-weight: 400; font-style: italic; }
.box { width: 4.6mm; height: 4.6mm; border: 1.2pt solid #000; margin-top: 0.3mm; font: 600 12pt/3.9mm Helvetica, Arial, sans-serif; text-align: center; }
.what { font-weight: 600; }
.who { font: 600 10.5pt/1.2 Helvetica, Arial, 'Liberation Sans', sans-serif; border: 0.8pt solid #000; border-radius: 2.5mm; padding: 0 1.4mm; margin-left: 1.5mm; white-space: nowrap; }
.time { font-weight: 400; font-size: 11pt; margin-left: 1.5mm; white-space: nowrap; }
.how { line-height: 1.24; }
.sign { font-style: italic; line-height: 1.24; }
.caution { font-weight: 600; line-height: 1.24; }
.write { margin-left: 4mm; align-self: start; border-bottom: 0.7pt solid #000; position: relative; height: 5.2mm; margin-bottom: 4.2mm; }
.till { position: absolute; top: 5.6mm; left: 0; right: 0; font-size: 10pt; line-height: 1.1; white-space: nowrap; }
.warning { border: 1.4pt solid #000; padding: 1mm 3mm; margin: 1.5mm 0.5mm; break-inside: avoid; }
.warning .what::before { content: '! '; }
.open { border: 1.4pt solid #000; padding: 2mm 3mm; break-inside: avoid; }
.open h2 { border: 0; }
.open li { display: grid; grid-template-columns: 8mm minmax(0, 1fr); padding: 0.8mm 0; }
.ladder { padding: 1mm 0; break-inside: avoid; border-bottom: 0.4pt solid #777; }
.ladder .what, .ladder .how { break-after: avoid; }
.rungs { columns: 2; column-gap: 6mm; margin-top: 1mm; }
.rung { display: grid; grid-template-columns: 7mm minmax(0, 1fr); break-inside: avoid; padding: 0.7mm 0; font-size: 11pt; line-height: 1.2; }
.notes { break-inside: avoid; }
.ruled p { height: 7.5mm; border-bottom: 0.7pt solid #777; }
.foot { font-size: 10pt; margin-top: 2.5mm; }
table { width: 100%; border-collapse: collapse; margin-top: 4mm; table-layout: fixed; font-size: 11.5pt; line-height: 1.2; }
th, td { text-align: left; vertical-align: top; padding: 1.1mm 3mm 1.1mm 0; border-bottom: 0.4pt solid #777; }
th:first-child, td:first-child { width: 30%; }
thead th { font-size: 10.5pt; font-weight: 600; border-bottom: 1.2pt solid #000; }
tr { break-inside: avoid; }
th.bed { font-size: 13pt; padding-top: 3mm; border-bottom: 1.2pt solid #000; break-after: avoid; }
tr:has(.bed) { break-after: avoid; }
.written { font-weight: 600; } .supposed { font-style: italic; }
.aside, .also { font-size: 10pt; line-height: 1.15; } .more { padding-left: 4mm; font-style: italic; }
.line { padding: 0.7mm 0; break-inside: avoid; }
@media screen {
  body { max-width: 210mm; margin: 0 auto; padding: 8mm 6mm 20mm; }
}
@media screen and (max-width: 620px) {
  body { padding: 5mm 4mm 16mm; }
  .job { grid-template-columns: 8mm minmax(0, 1fr); }
  .job .day { grid-column: 1 / -1; } .job .again { display: none; }
  .write { grid-column: 2; margin-left: 0; width: 100%; max-width: 60mm; }
  .rungs { columns: 1; }
  thead { display: none; } table, tbody, tr, td, th { display: block; } td { border: 0; padding: 0.4mm 0; } th:first-child, td:first-child { width: auto; } .planting b { margin-right: 2mm; }
  tr { border-bottom: 0.4pt solid #777; padding: 1.5mm 0; } td p { display: inline; margin-right: 2mm; }
  td[data-head]::before { content: attr(data-head) ': '; } td[data-head]:empty { display: none; }
}
`;
