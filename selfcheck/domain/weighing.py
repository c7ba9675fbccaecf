"""The readings of one check against one rule set: over, too close, under, or not to be told.

Readings that disagree are weighed one by one. What decides is the careful middle of them; what could still be true if
the highest were right makes the difference between "under" and "cannot tell".
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import NamedTuple

from selfcheck.domain.agreement import ROUNDING_M, SCATTER_M, deciding, height, near, with_sludge
from selfcheck.domain.check import Reading, Readings
from selfcheck.domain.conversions import INCH
from selfcheck.domain.findings import CannotTell, Finding, Verdict
from selfcheck.domain.household import Tank
from selfcheck.domain.layers import Layers, layers
from selfcheck.domain.limits import RuleSet, Standing, stand
from selfcheck.domain.shapes import Vessel
from selfcheck.domain.unsafe import unsafe

KINDS = ("sludge", "scum_total", "scum_above", "scum_below", "liquid_depth", "outlet_bottom_below_surface")
SCUM_KINDS = ("scum_total", "scum_above", "scum_below")
#: ids of sets of readings that cannot be right together whatever the limits are
IMPOSSIBLE = frozenset({"layers_do_not_fit", "negative", "no_liquid"})
#: From here on a crust may reach the top of an outlet device whose height nobody knows. Our choice, on the safe side.
SCUM_ABOVE_UNSEEN_TOP_M = 2 * INCH
#: A cause is named when it makes up this share of a squared error. Our choice.
TOLD_CAUSE = 0.10


class Scene(NamedTuple):
    """One tank with what the readings need around them.

    `level`: where the water stood, as in the check. `filling`: so soon after a pump-out that it is still rising; the
    crust will rise with it, so distances to the outlet are judged as they will be in the full tank.
    """

    tank: Tank
    vessel: Vessel
    rules: RuleSet
    level: str | None
    years: float | None
    filling: bool = False

    def layers(self, readings: Readings) -> Layers:
        """The layers these readings tell of."""
        return layers(self.tank, self.vessel, readings, self.level)

    def judged(self, readings: Readings) -> Layers:
        """The same layers as they are held against limits: in a tank that is still filling, as in the full one."""
        if not self.filling:
            return self.layers(readings)
        return layers(self.tank, self.vessel, readings.model_copy(update={"liquid_depth": []}), "at_outlet")

    def stand(self, readings: Readings) -> tuple[Standing, ...]:
        """How they stand against the deciding rule set."""
        return stand(self.rules, self.judged(readings), self.vessel, self.years)


class Weighed(NamedTuple):
    """What the readings say.

    `layers`: all readings together, the highest of sludge readings that clash standing in. `judged`: the layers by the
    readings that decide, as they are held against limits; `standings`: how they stand. `missing`: which of sludge, scum
    and liquid depth they do not tell. `beside`: the layers, as judged, of a second compartment that was read too.
    """

    layers: Layers
    judged: Layers
    standings: tuple[Standing, ...]
    findings: tuple[Finding, ...]
    missing: tuple[str, ...]
    odd: tuple[str, ...]
    beside: Layers | None = None

    @property
    def compartments(self) -> tuple[Layers, ...]:
        """The layers, as judged, of each compartment that was read."""
        return (self.judged,) if self.beside is None else (self.judged, self.beside)

    @property
    def disputed(self) -> bool:
        """Whether the readings contradict each other or cannot be."""
        return any(one.kind == "readings_clash" for one in self.findings)

    @property
    def chance(self) -> float | None:
        """The greatest chance of any limit being over; None when no limit can be told."""
        return greatest(self.standings)


def greatest(standings: Iterable[Standing]) -> float | None:
    """The greatest chance of being over among them."""
    return max((one.chance_over for one in standings if one.chance_over is not None), default=None)


def calls(standings: Iterable[Standing]) -> bool:
    """Whether any limit is over, or too close to call and so treated as over."""
    return any(one.call in ("over", "close") for one in standings)


def weigh(scene: Scene, readings: Readings) -> Weighed:
    """Every limit of the deciding rule set as a finding, and what keeps the readings from settling it."""
    counted, highest = deciding(readings), with_sludge(readings, sorted(readings.sludge, key=height)[-1:])
    found, standings = scene.layers(counted), scene.stand(counted)
    odd = tuple(dict.fromkeys((*found.odd, *scene.layers(highest).odd, *_too_thick(found))))
    missing = _missing(found, readings)
    findings: list[Finding] = []
    if IMPOSSIBLE & {*found.odd, *_too_thick(found)}:
        if _over_whichever_is_wrong(scene, counted):
            findings.append(Finding("over_whichever_is_wrong", "call_soon", uses=_paths(KINDS[:4], readings)))
        elif _reach_through(scene, counted):
            findings.append(Finding("clear_zone_gone", "call_soon", uses=_paths(KINDS[:5], readings)))
        standings = ()
    else:
        findings += [_limit_finding(scene, counted, readings, one) for one in standings if one.chance_over is not None]
        if calls(standings):
            findings += _set_aside(readings)
        else:
            findings += unsafe(scene.judged(counted), counted)
            findings += _scatter(scene, readings, highest)
            findings += _unseen_top(standings, found)
    for ident in odd:
        findings.append(Finding(f"odd_{ident}", "cannot_tell", uses=_odd_uses(ident, readings), kind="readings_clash"))
    return Weighed(scene.layers(readings), scene.judged(counted), standings, tuple(findings), missing, odd)


def _scatter(scene: Scene, readings: Readings, highest: Readings) -> list[Finding]:
    """Sludge readings that contradict each other, when the ones that count are under every limit."""
    ordered = sorted(readings.sludge, key=height)
    if len(ordered) < 2 or near(ordered):
        return []
    apart = ordered[-1].m - ordered[0].m
    facts: dict[str, float | str] = {"least_m": ordered[0].m, "most_m": ordered[-1].m}
    uses = ("seen.readings.sludge",)
    if apart > SCATTER_M + ROUNDING_M:
        return [Finding("sludge_scattered", "cannot_tell", facts=dict(facts), uses=uses, kind="readings_clash")]
    if len(ordered) == 2:
        either_way: Verdict = "cannot_tell" if calls(scene.stand(highest)) else "carry_on"
        kind: CannotTell | None = "readings_clash" if either_way == "cannot_tell" else None
        return [Finding("third_reading_wanted", either_way, facts=dict(facts), uses=uses, kind=kind)]
    return []


def _set_aside(readings: Readings) -> list[Finding]:
    """The sludge reading farthest from the median of three or more, where it is so far off that it had no say.

    Where the others are under every limit it has one: then the readings lie too far apart to tell.
    """
    if len(readings.sludge) < 3:
        return []
    median = deciding(readings).sludge[0].m
    far = max(readings.sludge, key=lambda one: abs(one.m - median)).m
    if abs(far - median) <= SCATTER_M + ROUNDING_M:
        return []
    return [Finding("sludge_set_aside", "carry_on", facts={"metres": far}, uses=("seen.readings.sludge",))]


def _unseen_top(standings: Iterable[Standing], found: Layers) -> list[Finding]:
    """A crust so high that it matters where the outlet device ends, and nobody knows."""
    asked = any(one.limit.kind == "scum_top_to_outlet_top" and one.margin is None for one in standings)
    if not asked or found.scum_above is None or found.scum_above.value < SCUM_ABOVE_UNSEEN_TOP_M:
        return []
    uses = ("household.outlet_top_above_surface_m",)
    return [Finding("outlet_top_not_known", "cannot_tell", uses=uses, kind="not_seen")]


def _limit_finding(scene: Scene, counted: Readings, readings: Readings, one: Standing) -> Finding:
    """One limit as a finding, citing those readings without which its margin would be another."""
    verdict: Verdict = "call_soon" if one.call in ("over", "close") else "carry_on"
    uses = []
    for kind in KINDS:
        if getattr(readings, kind):
            without = scene.stand(counted.model_copy(update={kind: []}))
            same = next(other for other in without if other.limit == one.limit)
            if same.margin != one.margin or same.error != one.error:
                uses.append(f"seen.readings.{kind}")
    causes = one.now.causes() if one.now else {}
    facts = {
        "rules": scene.rules.id,
        "now": one.now.value if one.now else None,
        "error": one.error,
        "margin": one.margin,
        "limit": one.least,
        "error_from": ", ".join(cause for cause, share in causes.items() if share >= TOLD_CAUSE),
    }
    return Finding(f"{one.limit.kind}_{one.call}", verdict, scene.rules.id, dict(facts), tuple(uses), one.chance_over)


def _over_whichever_is_wrong(scene: Scene, counted: Readings) -> bool:
    """Layers that do not fit: still over when any one of the readings is left out and the rest does fit."""
    one_less = [counted.model_copy(update={"sludge": []}), counted.model_copy(update={kind: [] for kind in SCUM_KINDS})]
    for fewer in one_less:
        lacking = _missing(scene.layers(fewer), fewer)
        filled = _least(fewer, lacking)
        then = scene.layers(filled)
        if IMPOSSIBLE & {*then.odd, *_too_thick(then)} or not calls(scene.stand(filled)):
            return False
    return True


def _reach_through(scene: Scene, counted: Readings) -> bool:
    """Layers that reach through each other, though each of them fits the tank: no clear water is left."""
    alone = [counted.model_copy(update={"sludge": []}), counted.model_copy(update={kind: [] for kind in SCUM_KINDS})]
    found = [scene.layers(one) for one in alone]
    return not any(IMPOSSIBLE & {*one.odd, *_too_thick(one)} for one in found)


def _too_thick(found: Layers) -> tuple[str, ...]:
    """A crust thicker than the liquid it floats on is a slip, whatever share of it hangs below."""
    if found.scum and found.liquid_depth and found.scum.value > found.liquid_depth.value:
        return ("layers_do_not_fit",)
    return ()


def _missing(found: Layers, readings: Readings) -> tuple[str, ...]:
    missing = []
    if not readings.sludge:
        missing.append("sludge")
    if found.scum is None:
        missing.append("scum")
    if found.liquid_depth is None:
        missing.append("liquid_depth")
    return tuple(missing)


def _least(readings: Readings, missing: Iterable[str]) -> Readings:
    """The same with the least that a layer nobody read can be: nothing."""
    nothing = [Reading(m=0.0)]
    named = {"sludge": "sludge", "scum": "scum_total"}
    return readings.model_copy(update={named[name]: nothing for name in missing if name in named})


def _odd_uses(ident: str, readings: Readings) -> tuple[str, ...]:
    kinds: tuple[str, ...] = KINDS
    if ident in ("depth_not_as_known", "no_liquid"):
        kinds = ("liquid_depth",)
    elif ident in ("outlet_disagrees", "outlet_below_floor"):
        kinds = ("outlet_bottom_below_surface",)
    elif ident == "scum_parts_do_not_fit":
        kinds = SCUM_KINDS
    return _paths(kinds, readings)


def _paths(kinds: Iterable[str], readings: Readings) -> tuple[str, ...]:
    return tuple(f"seen.readings.{kind}" for kind in kinds if getattr(readings, kind))
