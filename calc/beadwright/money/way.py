"""One way to weld a part, in numbers: metal, gas, minutes and prices."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Rates:
    """What the shop pays in every way of welding.

    Attributes:
        labor_s: Labor, wages and what comes on top, zero or more [money/s].
        overhead_s: Overhead, zero or more [money/s].
        energy_j: Electricity, zero or more [money/J].
        machine_efficiency: Arc power over power drawn, above 0 to 1 [-].
        idle_w: Drawn while no arc burns, zero or more [W].
    """

    labor_s: float
    overhead_s: float
    energy_j: float
    machine_efficiency: float
    idle_w: float


@dataclass(frozen=True, slots=True)
class Way:
    """One way to weld one part. Minutes without an arc are for each part; a spool change, a spool.

    With two stations the next part is loaded, fitted up and cleaned up while this one is welded:
    the longer of the two rules.

    Attributes:
        name: Its name.
        metal_kg: Weld metal in a part [kg].
        length_m: Welded length of a part [m].
        melted_kg_s: Wire melted while the arc burns [kg/s].
        efficiency: Laid metal over wire melted, above 0 to 1 [-].
        waste: Share of the wire bought that is never melted: ends, jams, purge [-].
        wire_kg: Price of wire [money/kg].
        gas_m3: Price of gas [money/m³].
        gas_flow_m3_s: Gas flow [m³/s].
        gas_extra_s: Gas before and after each arc [s].
        starts: Arcs struck on a part [-].
        arc_w: Volts times amps at the arc [W].
        tips_s: Tips and nozzles by arc time [money/s].
        spool_kg: Wire on a spool [kg].
        spool_change_s: Minutes for one change of spool [s].
        fit_up_s: Fit-up and tacking [s].
        reposition_s: Moving to the next weld, turning the part [s].
        clean_s: Cleaning passes [s].
        spatter_s: Taking spatter off [s].
        other_s: Any other time off the arc [s].
        rework: Share of parts welded a second time [-].
        grind_s: Grinding out a part before it is welded again [s].
        yearly: Paid by the year for welding this way [money].
        once: Paid once for changing to this way [money].
        load_s: Loading and unloading [s].
        swap_s: Share of a batch's change-over of wire that falls to a part [s].
        stopped: Stops to clean the nozzle, for each second of arc [-].
        tipped: Tip changes, for each second of arc [-].
        stations: 1, or 2 if one is loaded while the other is welded [-].
        rate_s: Its own rate, labor and overhead in it; None: what the shop pays [money/s].
    """

    name: str
    metal_kg: float
    length_m: float
    melted_kg_s: float
    efficiency: float
    waste: float
    wire_kg: float
    gas_m3: float
    gas_flow_m3_s: float
    gas_extra_s: float
    starts: float
    arc_w: float
    tips_s: float
    spool_kg: float
    spool_change_s: float
    fit_up_s: float
    reposition_s: float
    clean_s: float
    spatter_s: float
    other_s: float
    rework: float
    grind_s: float
    yearly: float
    once: float
    load_s: float = 0.0
    swap_s: float = 0.0
    stopped: float = 0.0
    tipped: float = 0.0
    stations: int = 1
    rate_s: float | None = None

    @property
    def laid_kg_s(self) -> float:
        """Deposition rate while the arc burns [kg/s]."""
        return self.melted_kg_s * self.efficiency

    @property
    def arc_s(self) -> float:
        """Arc time of a part welded once [s]."""
        return self.metal_kg / self.laid_kg_s

    @property
    def wire_once_kg(self) -> float:
        """Wire bought for a part welded once [kg]."""
        return self.metal_kg / self.efficiency / (1 - self.waste)

    @property
    def spool_s(self) -> float:
        """Share of a spool change that falls to a part welded once [s]."""
        return self.spool_change_s * self.wire_once_kg / self.spool_kg

    @property
    def torch_s(self) -> float:
        """Time of a part welded once that the torch is taken up: the arc, and what stops it [s]."""
        arc = self.arc_s
        return (
            arc * (1 + self.stopped + self.tipped)
            + self.reposition_s
            + self.clean_s
            + self.other_s
            + self.spool_s
            + self.swap_s
        )

    @property
    def hands_s(self) -> float:
        """Time of a part welded once to load it, fit it up and clean it up [s]."""
        return self.load_s + self.fit_up_s + self.spatter_s

    @property
    def waits_s(self) -> float:
        """Time the torch waits for the hands, with two stations [s]."""
        return max(0.0, self.hands_s - self.torch_s) if self.stations > 1 else 0.0

    @property
    def cycle_s(self) -> float:
        """Time of a part welded once [s]."""
        return self.torch_s + (self.waits_s if self.stations > 1 else self.hands_s)

    @property
    def off_s(self) -> float:
        """Time of a part welded once while no arc burns [s]."""
        return self.cycle_s - self.arc_s

    @property
    def time_s(self) -> float:
        """Time of a part, rework shared out [s]."""
        cycle = self.cycle_s
        return cycle + self.rework * (cycle + self.grind_s)

    @property
    def factor(self) -> float:
        """Operating factor: arc time over all time, welded once [-]."""
        return self.arc_s / self.cycle_s

    @property
    def bought_kg(self) -> float:
        """Wire bought for a part, rework shared out [kg]."""
        return (1 + self.rework) * self.wire_once_kg

    @property
    def gas_part_m3(self) -> float:
        """Gas for a part, rework shared out [m³]."""
        return (1 + self.rework) * self.gas_once_m3

    @property
    def gas_once_m3(self) -> float:
        """Gas for a part welded once [m³]."""
        return self.gas_flow_m3_s * (self.arc_s + self.starts * self.gas_extra_s)


def off_arc(arc_s: float, factor: float) -> float:
    """Return the time without an arc that follows from an operating factor [s].

    Source: definition of the factor: arc time over all time.

    Args:
        arc_s: Arc time [s].
        factor: Operating factor, above 0 to 1 [-].
    """
    return arc_s * (1 / factor - 1)
