// @ts-check
/* The entry: every page imports this, and a module is evaluated once a visit. */
import "../vendor/turbo.es2017-esm.js";
import "./offline_panel.js";
import "./head_links.js";
import "./theme.js";
import "./share.js";
import "./carry.js";
import "./more.js";
import "./dial_in.js";
