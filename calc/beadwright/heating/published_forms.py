"""Several published forms for one quantity, and the spread between them."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from beadwright.results import Quantity

ALONE = 2.0
"""How far off a form may be where it stands alone, either way, as a factor [-].

Source: common practice: published forms for the same shrinkage differ by about this.
"""

TOGETHER = 1.5
"""How far off forms may be that agree, either way, as a factor [-].

Source: common practice: parts welded alike bow and shrink by about so much more or less.
"""


@dataclass(frozen=True, slots=True)
class Form:
    """What one published form gives.

    Attributes:
        name: Whose form it is.
        value: What it gives [SI].
        source: Source id.
    """

    name: str
    value: float
    source: str


def spread(name: str, measure: str, forms: Sequence[Form], none: str = "") -> Quantity:
    """Return what forms give together: the first as the number, lowest to highest as its band.

    The number is one form's, so that ways compared with it differ as that form says, whichever
    other forms hold for each. The band is no narrower than a factor ``TOGETHER`` either way,
    ``ALONE`` for a form that has no other beside it.

    Args:
        name: The trade's name for the quantity [-].
        measure: Kind of quantity [-].
        forms: What each form gives, zero or more; none where no form holds [SI].
        none: Why there is no form, where there is none [-].
    """
    if not forms:
        return Quantity(name, measure, None, low_by=none)
    value, room = forms[0].value, TOGETHER if len(forms) > 1 else ALONE
    lowest = min(forms, key=lambda form: form.value)
    highest = max(forms, key=lambda form: form.value)
    return Quantity(
        name,
        measure,
        value,
        min(lowest.value, value / room),
        max(highest.value, value * room),
        "band",
        tuple(dict.fromkeys(form.source for form in forms)),
        lowest.name,
        highest.name,
    )
