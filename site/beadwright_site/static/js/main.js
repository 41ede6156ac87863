// @ts-check
/* The entry: every page imports this, and a module is evaluated once a visit. */
import "../vendor/turbo.es2017-esm.js";
import "./page/phone_panel.js";
import "./page/head_links.js";
import "./page/theme.js";
import "./page/share.js";
import "./page/link_code.js";
import "./page/carry.js";
import "./page/page_sheet.js";
import "./page/answer_page.js";
