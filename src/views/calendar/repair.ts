const ALL_DAY_TWICE =
  "X-MICROSOFT-CDO-ALLDAYEVENT:TRUE\r\nX-MICROSOFT-MSNCALENDAR-ALLDAYEVENT:TRUE\r\n";
const URL_NAME = "\r\nURL;VALUE=URI:";
const END = "END:VEVENT\r\n";

/**
 * One event as the library writes it, unfolded, put right: without the two Microsoft properties, the URL
 * as the URI it is and not as TEXT, and its alarm (unfolded, empty for none) after its properties, where
 * the grammar has it. Text cannot fool it: inside a value no line end stands.
 * Source: RFC 5545, sections 3.3.13, 3.6.1 and 3.8.4.6.
 */
export function repairEvent(event: string, alarm: string): string {
  const plain = withPlainLink(without(event, ALL_DAY_TWICE));
  return alarm === "" ? plain : `${plain.slice(0, -END.length)}${alarm}${END}`;
}

function without(text: string, part: string): string {
  const at = text.indexOf(part);
  return at < 0 ? text : text.slice(0, at) + text.slice(at + part.length);
}

function withPlainLink(text: string): string {
  const at = text.lastIndexOf(URL_NAME);
  if (at < 0) return text;
  const from = at + URL_NAME.length;
  const to = text.indexOf("\r\n", from);
  const link = text.slice(from, to);
  if (!link.includes("\\")) return text;
  return text.slice(0, from) + link.replace(/\\([\\;,])/g, "$1") + text.slice(to);
}
