"""Several published forms for one quantity, and the spread between them."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from beadwright.phrases import Phrase
from beadwright.results import Quantity

ALONE = 2.0
"""Factor, up or down, by which a form may be off if it is the only one [-].

Source: common practice: published forms for the same shrinkage differ by about this.
"""

TOGETHER = 1.5
"""Factor, up or down, by which forms that agree may still be off [-].

Source: common practice: equal parts welded in the same way bow and shrink by about so much more or
less.
"""


@dataclass(frozen=True, slots=True)
class Form:
    """What one published form gives.

    Attributes:
        name: Author of the form, or what it goes by.
        value: What it gives [SI].
        source: Source id.
    """

    name: Phrase
    value: float
    source: str


def spread(name: str, measure: str, forms: Sequence[Form], none: Phrase | None = None) -> Quantity:
    """Return what forms give together: the first as the number, lowest to highest as its band.

    The number is that of one form, so that ways of welding compare by one form, whichever other
    forms hold for each. The band is at least a factor ``TOGETHER`` up and down, ``ALONE`` for a
    single form.

    Args:
        name: The trade's name for the quantity [-].
        measure: Kind of quantity [-].
        forms: What each form gives, zero or more; none where no form holds [SI].
        none: Why there is no form, or None where there is one [-].
    """
    if not forms:
        return Quantity(name, measure, None, low_by=none)
    value, room = forms[0].value, TOGETHER if len(forms) > 1 else ALONE
    lowest = min(forms, key=lambda form: form.value)
    highest = max(forms, key=lambda form: form.value)
    return Quantity(
        name=name,
        measure=measure,
        value=value,
        low=min(lowest.value, value / room),
        high=max(highest.value, value * room),
        meaning="band",
        sources=tuple(dict.fromkeys(form.source for form in forms)),
        low_by=lowest.name,
        high_by=highest.name,
    )
