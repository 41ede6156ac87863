"""The Method page's matter: equations, tables and plots by topic. Never loaded on the phone."""
