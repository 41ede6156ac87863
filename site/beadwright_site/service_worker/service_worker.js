// @ts-check
/*
 * Keeps the whole app on the phone, by content: each file is stored under the SHA-256 of its bytes.
 *
 * Two groups. The shell (pages, styles, scripts) is stored while this worker installs, whole or not
 * at all. The runtime (the calculator) comes when the page asks with ENSURE, two files at a time,
 * and resumes file by file. A worker that replaces another stores both groups before it counts as
 * installed, so an update that is offered, or that the browser takes by itself once every tab is
 * shut, is always complete.
 *
 * Nothing is stored that does not hash to what the release list says: a sign-in page of the shop's
 * network, a cut file or a file of another release is refused, with the reason.
 * What the welder saved (IndexedDB) is never touched from here.
 *
 * The build makes one file of these modules, with the release list in its first line.
 */
import "./installing.js";
import "./page_requests.js";
import "./serving.js";
