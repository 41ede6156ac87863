// @ts-check
import "../vendor/turbo.es2017-esm.js";
import "./offline_panel.js";
