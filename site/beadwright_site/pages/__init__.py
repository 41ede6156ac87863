"""The pages, each a folder with its module, form, templates and styles."""
