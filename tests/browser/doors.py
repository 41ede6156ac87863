"""What no page may do: break its own policy, or ask another origin. Heard in every tab."""

from dataclasses import dataclass, field
from urllib.parse import urlsplit

from playwright.sync_api import BrowserContext, ConsoleMessage, Request

OWN_HOSTS = {"localhost", "127.0.0.1"}
SAY_VIOLATION = """
addEventListener("securitypolicyviolation", (event) => console.error(
  `broke its policy: ${event.effectiveDirective} ${event.blockedURI} ${event.sample}`));
"""


@dataclass
class Doors:
    """What was heard since the last test."""

    broken: list[str] = field(default_factory=list[str])

    def watch(self, context: BrowserContext) -> None:
        """Listen to all tabs of a browser profile, and their workers."""
        context.add_init_script(SAY_VIOLATION)
        context.on("console", self._heard)
        context.on("request", self._asked)

    def _heard(self, message: ConsoleMessage) -> None:
        if message.type == "error" and "policy" in message.text.lower():
            self.broken.append(message.text)

    def _asked(self, request: Request) -> None:
        address = urlsplit(request.url)
        if address.scheme in {"http", "https"} and address.hostname not in OWN_HOSTS:
            self.broken.append(f"asked another origin: {request.url}")
