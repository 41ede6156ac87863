"""Made sound of a shop with known truth: arcs, grinder, hammer, speech, silence, a second arc."""

from __future__ import annotations

from typing import Any

import numpy as np
from numpy.typing import NDArray

RATE = 24_000
"""Samples a second."""

Sound = NDArray[np.float64]


class Shop:
    """A length of sound that things are added to; amplitudes are shares of full scale."""

    def __init__(self, seconds: float, seed: int, hum: float = 0.003) -> None:
        self.chance = np.random.default_rng(seed)
        self.sound: Sound = np.zeros(round(seconds * RATE))
        time = np.arange(self.sound.size) / RATE
        self.sound += hum * (np.sin(2 * np.pi * 60 * time) + 0.5 * self._noise(self.sound.size))

    def _noise(self, count: int) -> Sound:
        return self.chance.standard_normal(count)

    def _add(self, start: float, sound: Sound) -> None:
        at = round(start * RATE)
        part = self.sound[at : at + sound.size]
        part += sound[: part.size]

    def short_arc(
        self, start: float, seconds: float, rate: float, loud: float = 0.12, even: float = 6.0
    ) -> Sound:
        """A short-circuit arc: pops that come unevenly over a hiss; return when each comes [s].

        The time between two is drawn from a gamma distribution of shape ``even``: the larger, the
        more evenly they come.
        """
        pops: list[float] = []
        count = round(seconds * RATE)
        sound = 0.12 * loud * self._noise(count)
        at = 0.0
        while at < seconds:
            pop = round(0.003 * RATE)
            place = round(at * RATE)
            pops.append(at)
            burst = self._noise(pop) * np.exp(-np.arange(pop) / (0.0008 * RATE))
            room = sound[place : place + pop]
            room += loud * 1.6 * (0.7 + 0.6 * self.chance.random()) * burst[: room.size]
            at += max(0.004, self.chance.gamma(even, 1 / rate / even))
        self._add(start, sound)
        return start + np.array(pops)

    def spray_arc(self, start: float, seconds: float, loud: float = 0.1) -> None:
        """An open arc: a rough hiss."""
        count = round(seconds * RATE)
        slow = np.repeat(self.chance.gamma(6.0, 1 / 6.0, count // 48 + 1), 48)[:count]
        self._add(start, loud * np.sqrt(slow) * self._noise(count))

    def grinder(self, start: float, seconds: float, loud: float = 0.12) -> None:
        """A grinder: harmonics of its turns, and a rub that comes with each."""
        time = np.arange(round(seconds * RATE)) / RATE
        spin = np.minimum(time / 0.4, 1.0)
        turns = 2 * np.pi * 183 * time
        sound = sum(np.sin(n * turns + n) / n**0.7 for n in range(1, 30))
        rub = (1 + 0.9 * np.sin(turns)) * self._noise(time.size)
        self._add(start, loud * spin * (0.3 * np.asarray(sound) + 0.5 * rub))

    def rub(self, start: float, seconds: float, loud: float = 0.1) -> None:
        """A grinder already turning, put to the plate: rough all at once, even as its turns."""
        time = np.arange(round(seconds * RATE)) / RATE
        turns = 2 * np.pi * 183 * time
        self._add(start, loud * (1 + 0.95 * np.sin(turns)) * self._noise(time.size))

    def clang(self, start: float, loud: float = 0.5) -> None:
        """A sheet let fall: it rattles for a second and dies away."""
        time = np.arange(round(1.2 * RATE)) / RATE
        self._add(start, loud * np.exp(-time * 5) * self._noise(time.size))

    def bolts(self, start: float, loud: float = 0.5) -> None:
        """Bolts tipped into a bin: blows that come unevenly, and fewer reach far."""
        seconds, at = 1.0, 0.0
        while at < seconds:
            time = np.arange(round(0.003 * RATE)) / RATE
            blow = self._noise(time.size) * np.exp(-time / 0.0008)
            far = (0.7 + 0.6 * self.chance.random()) * np.exp(-4.5 * at)
            self._add(start + at, loud * far * blow)
            at += 0.004 + self.chance.exponential(0.004)

    def beeper(self, start: float, seconds: float, loud: float = 0.2, pitch: float = 3700) -> None:
        """A truck that backs up: one tone."""
        time = np.arange(round(seconds * RATE)) / RATE
        self._add(start, loud * np.sin(2 * np.pi * pitch * time))

    def hammer(self, start: float, loud: float = 0.7) -> None:
        """One blow on plate: a crack, and modes that ring out."""
        time = np.arange(round(0.8 * RATE)) / RATE
        ring = sum(
            np.sin(2 * np.pi * f * time) * np.exp(-time * d)
            for f, d in ((740, 12), (1930, 15), (4200, 22), (6300, 30))
        )
        crack = self._noise(time.size) * np.exp(-time * 120)
        self._add(start, loud * (0.25 * np.asarray(ring) + crack))

    def speech(self, start: float, seconds: float, loud: float = 0.15) -> None:
        """A voice: vowels with a pitch, hisses between, four syllables a second."""
        at = 0.0
        while at < seconds:
            length = 0.12 + 0.15 * self.chance.random()
            time = np.arange(round(length * RATE)) / RATE
            swell = np.sin(np.pi * time / length)
            if self.chance.random() < 0.35:
                self._add(start + at, 0.5 * loud * swell * self._noise(time.size))
            else:
                pitch = 100 + 80 * self.chance.random()
                vowel = sum(np.sin(2 * np.pi * pitch * n * time) / n for n in range(1, 25))
                self._add(start + at, loud * swell * np.asarray(vowel))
            at += length + 0.05 + 0.1 * self.chance.random()

    def raw(self) -> bytes:
        """The sound as 32-bit floats, cut at full scale."""
        cut: Any = np.clip(self.sound, -1, 1).astype("<f4")
        return bytes(cut.tobytes())
