import { writeSegment } from "../links/segment.ts";
import { gardenRecord } from "../store/gardens.ts";
import { isInvited } from "../store/invitations.ts";
import { planVersion } from "../store/plans.ts";
import { MOST_ARCHIVE } from "../store/thinning.ts";
import { json, pageResponse, plain } from "./answers.ts";
import { writeAndRebuild } from "./garden-context.ts";
import { frameOf, type GardenRequest, type LinkRequest } from "./garden-request.ts";
import { isNamed, leavingOf } from "./leaving.ts";
import { leavingPage } from "./pages/leaving.tsx";
import { notRestoredPage } from "./pages/restoring.tsx";
import { ownersPage } from "./recovery.ts";

const MIB = 1024 * 1024;

/** What became of an archive: how much of the garden it made, or why nothing was stored. */
type Outcome =
  | { readonly kind: "restored"; readonly years: readonly number[]; readonly lines: number }
  | { readonly kind: "wrong"; readonly why: readonly string[] }
  | { readonly kind: "gone" | "not empty" };

/** Makes a garden from an archive, whole or not at all; what follows from it is built behind the answer. */
async function restore(
  { context, link, origin }: LinkRequest,
  bytes: Uint8Array,
  over: boolean,
): Promise<Outcome> {
  if (bytes.length > MOST_ARCHIVE.packed)
    return { kind: "wrong", why: [`An archive may have ${MOST_ARCHIVE.packed / MIB} MiB.`] };
  const { readArchive } = await import("../backup/read-archive.ts");
  const { BadArchive } = await import("../backup/unpack.ts");
  const { readPlans, restoreGarden } = await import("../backup/restore.ts");
  const { garden } = link;
  try {
    const archived = readArchive(bytes);
    const { plans, problems } = readPlans(archived, garden, await context.engine());
    if (problems !== null) return { kind: "wrong", why: problems };
    const target = { garden, origin, now: context.now(), code: context.code, over };
    const kept = writeAndRebuild(
      context,
      () => restoreGarden(context.sql, archived, { plans, target }),
      (outcome) => outcome === null,
    );
    if (kept !== null) return { kind: kept };
    return { kind: "restored", years: [...plans.keys()], lines: archived.snapshot.diary.length };
  } catch (error) {
    if (error instanceof BadArchive) return { kind: "wrong", why: [`${error.message}.`] };
    throw error;
  }
}

/**
 * For programs: makes the garden from the archive that is sent, where there is none (`If-None-Match: *`) or in place of the one that is
 * there (`If-Match: *`). 201 with its years and how many lines its diary has; 422 with what is wrong; 412 where a garden is there;
 * 410 where it was deleted for good; 428 without a condition. Whatever is no 201 has stored nothing.
 */
export async function answerRestore(linkRequest: LinkRequest): Promise<Response> {
  const { headers } = linkRequest.request;
  const over = headers.get("if-match")?.trim() === "*";
  if (!over && headers.get("if-none-match")?.trim() !== "*")
    return plain(428, "Say whether it may take the place of a garden that is there.\n");
  const bytes = new Uint8Array(await linkRequest.request.arrayBuffer());
  const outcome = await restore(linkRequest, bytes, over);
  switch (outcome.kind) {
    case "restored":
      return json(201, { years: outcome.years, lines: outcome.lines });
    case "wrong":
      return json(422, { problems: outcome.why });
    case "not empty":
      return plain(412, "There is a garden already.\n");
    case "gone":
      return plain(410, "This garden was deleted for good. Restore it under another name.\n");
  }
}

/** An owner's form: the garden as an archive has it, in place of what is there, where the form has the garden's name. */
export async function answerRestoreForm(gardenRequest: GardenRequest): Promise<Response> {
  const { stored, base } = gardenRequest;
  const sent = await sentIn(gardenRequest.request);
  const wrong = (why: readonly string[]) =>
    pageResponse(
      400,
      leavingPage(frameOf(gardenRequest), { ...leavingOf(stored), notRestored: why }),
    );
  if (sent === null) return wrong(["No archive was sent."]);
  if (sent.bytes.length <= MOST_ARCHIVE.packed && !isNamed(stored, sent.name))
    return wrong(["That is another name than the garden's."]);
  const outcome = await restore(gardenRequest, sent.bytes, true);
  if (outcome.kind === "wrong") return wrong(outcome.why);
  return plain(303, "Restored.\n", { Location: `${base}leaving?restored=yes` });
}

/**
 * An invitation's form: its garden as an archive has it, and the owner's link. Null where the invitation makes no garden any more,
 * unless it made that very one, as after an answer that was lost.
 */
export async function answerRestoreInvited(linkRequest: LinkRequest): Promise<Response | null> {
  const { context, link, request } = linkRequest;
  const open = isInvited(context.sql, writeSegment(link));
  const sent = await sentIn(request);
  if (sent === null)
    return open ? pageResponse(400, notRestoredPage(["No archive was sent."])) : null;
  if (!open) return (await isOf(linkRequest, sent.bytes)) ? ownersPage(linkRequest, 1) : null;
  const outcome = await restore(linkRequest, sent.bytes, false);
  if (outcome.kind === "wrong") return pageResponse(422, notRestoredPage(outcome.why));
  return outcome.kind === "restored"
    ? ownersPage(linkRequest, gardenRecord(context.sql)?.owner ?? 1)
    : null;
}

/** Whether the garden that is there was made from that archive: every plan in force there is a version here. */
async function isOf({ context }: LinkRequest, bytes: Uint8Array): Promise<boolean> {
  if (gardenRecord(context.sql) === null) return false;
  const { readArchive } = await import("../backup/read-archive.ts");
  try {
    return readArchive(bytes).versions.every(
      (version) => planVersion(context.sql, version)?.text === version.text,
    );
  } catch {
    return false;
  }
}

/** The archive and the name in a form that carries a file; null where it carries none. */
async function sentIn(
  request: Request,
): Promise<{ readonly bytes: Uint8Array; readonly name: string } | null> {
  try {
    const body = await request.arrayBuffer();
    // A body that is too long was read no further, and can't be taken apart.
    if (body.byteLength > MOST_ARCHIVE.packed) return { bytes: new Uint8Array(body), name: "" };
    const headers = { "content-type": request.headers.get("content-type") ?? "" };
    const form = await new Response(body, { headers }).formData();
    const [file, name] = [form.get("archive"), form.get("name")];
    if (file === null || typeof file === "string" || file.size === 0) return null;
    const bytes = new Uint8Array(await file.arrayBuffer());
    return { bytes, name: typeof name === "string" ? name : "" };
  } catch {
    return null;
  }
}
