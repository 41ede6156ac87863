"""Compile the page templates to Python ahead of time, so that the phone need not."""

from pathlib import Path

from beadwright_site.rendering import environment

PACKAGE = "beadwright_site_templates"


def compile_templates(to: Path) -> None:
    """Write every template as a module of the package, below a source root.

    Raises:
        jinja2.TemplateSyntaxError: If a template does not compile.
    """
    package = to / PACKAGE
    package.mkdir(parents=True)
    (package / "__init__.py").write_text('"""Page templates, compiled by the build."""\n')
    environment().compile_templates(package, zip=None, ignore_errors=False)
